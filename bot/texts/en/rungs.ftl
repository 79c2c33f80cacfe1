# The steps of each strand, as they stand in plans, digests and at the head of a drill. They also stand inside sentences,
# so they begin with a small letter and have no full stop. One message for each step of the ladder.

rungs-words-to20 = number words to 20
rungs-words-tens = number words of the tens to 100
rungs-words-to100 = number words to 100
rungs-words-to200 = number words to 200

rungs-bonds-within5 = adding within 5
rungs-bonds-to10 = adding within 10
rungs-bonds-make10 = what makes 10
rungs-bonds-ties = ties and near ties to 20
rungs-bonds-bridging = adding across 10
rungs-bonds-make20 = what makes 20
rungs-bonds-to20 = adding within 20
rungs-bonds-anygap10 = missing number, adding within 10
rungs-bonds-anygap20 = missing number, adding within 20

rungs-takeaway-within5 = take away within 5
rungs-takeaway-to10 = take away within 10
rungs-takeaway-teens = take away from 11 to 19, not across 10
rungs-takeaway-bridging = take away across 10
rungs-takeaway-to20 = take away within 20
rungs-takeaway-anygap10 = missing number, take away within 10
rungs-takeaway-anygap20 = missing number, take away within 20

rungs-doubles-to5 = doubles to 5 + 5
rungs-doubles-to10 = doubles to 10 + 10
rungs-doubles-to20 = doubles to 20 + 20
rungs-doubles-tens = doubles of tens to 100

rungs-halves-to10 = halves of even numbers to 10
rungs-halves-to20 = halves of even numbers to 20
rungs-halves-to40 = halves of even numbers to 40
rungs-halves-tens = halves of tens to 100

rungs-clock-oclock = clock (o’clock)
rungs-clock-half = clock (half past)
rungs-clock-mixed = clock (o’clock and half past)
rungs-clock-quarterpast = clock (quarter past)
rungs-clock-quarterto = clock (quarter to)
rungs-clock-quarters = clock (quarter hours)
rungs-clock-fivepast = clock (five minutes, past)
rungs-clock-fiveto = clock (five minutes, to)
rungs-clock-all = clock (every five minutes)

rungs-counting-onesback20 = counting back in ones within 20
rungs-counting-ones100 = counting in ones to 100
rungs-counting-onesback100 = counting back in ones within 100
rungs-counting-tens100 = counting in tens to 100
rungs-counting-tensback100 = counting back in tens within 100
rungs-counting-tensoff100 = counting in tens like 13, 23, 33 to 100
rungs-counting-tensoffback100 = counting back in tens like 33, 23, 13 within 100
rungs-counting-fives100 = counting in fives to 100
rungs-counting-fivesback100 = counting back in fives within 100
rungs-counting-twos100 = counting in twos to 100
rungs-counting-twosback100 = counting back in twos within 100
rungs-counting-threes100 = counting in threes to 100
rungs-counting-threesback100 = counting back in threes within 100
rungs-counting-fours100 = counting in fours to 100
rungs-counting-foursback100 = counting back in fours within 100
rungs-counting-ones = counting in ones to 200
rungs-counting-onesback = counting back in ones within 200
rungs-counting-onesacross = counting in ones across hundreds to 200
rungs-counting-onesbackacross = counting back in ones across hundreds within 200
rungs-counting-tens = counting in tens to 200
rungs-counting-tensback = counting back in tens within 200
rungs-counting-tensoff = counting in tens like 13, 23, 33 to 200
rungs-counting-tensoffback = counting back in tens like 33, 23, 13 within 200
rungs-counting-fives = counting in fives to 200
rungs-counting-fivesback = counting back in fives within 200
rungs-counting-twos = counting in twos to 200
rungs-counting-twosback = counting back in twos within 200
rungs-counting-threes = counting in threes to 200
rungs-counting-threesback = counting back in threes within 200
rungs-counting-fours = counting in fours to 200
rungs-counting-foursback = counting back in fours within 200
rungs-counting-ones1000 = counting in ones to 1000
rungs-counting-onesback1000 = counting back in ones within 1000
rungs-counting-onesacross1000 = counting in ones across hundreds to 1000
rungs-counting-onesbackacross1000 = counting back in ones across hundreds within 1000
rungs-counting-tens1000 = counting in tens to 1000
rungs-counting-tensback1000 = counting back in tens within 1000
rungs-counting-tensoff1000 = counting in tens like 13, 23, 33 to 1000
rungs-counting-tensoffback1000 = counting back in tens like 33, 23, 13 within 1000
rungs-counting-fives1000 = counting in fives to 1000
rungs-counting-fivesback1000 = counting back in fives within 1000
rungs-counting-twos1000 = counting in twos to 1000
rungs-counting-twosback1000 = counting back in twos within 1000
rungs-counting-threes1000 = counting in threes to 1000
rungs-counting-threesback1000 = counting back in threes within 1000
rungs-counting-fours1000 = counting in fours to 1000
rungs-counting-foursback1000 = counting back in fours within 1000

rungs-times-twos = two times table
rungs-times-tens = ten times table
rungs-times-fives = five times table
rungs-times-mixed = two, five and ten times tables
