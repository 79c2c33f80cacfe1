# Not checked by a native speaker.

own-way-title = { $child }: net vir hierdie kind
own-way-no-plan = Nog geen weekplan in gebruik nie.
own-way-untimed = Sonder tyd: kaarte kom as prente, nooit as ’n videogreep nie.
own-way-from-next = Van die volgende aand af. Die gesin en die klas se onderwysers sien dit, niemand anders nie.

own-way-part = { $part }, { $amount }
own-way-instead = { $part }, { $amount }, in plaas van { $before }
own-way-no-easier = { $part }, { $amount } (geen makliker stap hier nie)
own-way-no-harder = { $part }, { $amount } (geen moeiliker stap hier nie)

own-way-only = Net vir hierdie kind: { $changes }
own-way-easier = makliker stappe
own-way-harder = moeiliker stappe
own-way-fewer = minder kaarte
own-way-no-timing = sonder tyd
