# Not checked by a native speaker.
limits-codes-paused = Te veel kodes wat nie werk nie, het van u af gekom. Probeer weer oor { $wait }, of vra die onderwyser vir ’n nuwe skakel.
limits-left-out = Baie het gelyk van u af gekom, so ek het ’n deel daarvan uitgelaat.
limits-what-is-kept = Wat ek beantwoord het, is bewaar. Wag ’n oomblik en stuur dan /today of /class om te sien hoe sake staan.
