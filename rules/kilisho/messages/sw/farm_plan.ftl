# of 1bb7c8b1, reviewed: false
plan-digester-working = mtambo tayari unafanya kazi
# of f1ba20eb, reviewed: false
plan-nothing-to-charge = mifugo haikutajwa wala malisho
# of c22c0026, reviewed: false
plan-no-day-of-charge = unahitajika ujazaji wa kwanza pamoja na siku ambayo mtambo uko tayari
# of 632dac75, reviewed: false
plan-no-use-stated = hakuna kinachosema gesi inatumika kwa nini
# of 005f34b9, reviewed: false
plan-no-crops = hakuna mazao yaliyotajwa
# of 0a11c588, reviewed: false
plan-refused = { $faults }
# of 58e30a8b, reviewed: false
plan-charged-once = mtambo wa aina hii hujazwa mara moja na kuachwa; uliza batch-rotation kuhusu gesi yake na ujazaji unaofuata
# of 41cddbb2, reviewed: false
plan-left-over = Shamba lina { $mass } zaidi ya malisho kuliko mtambo huu unavyopewa: yabaki kwa ajili ya shamba, au kwa mtambo mkubwa zaidi. Kuyalisha pia kungeacha kila kilo muda mfupi zaidi ndani ya mtambo.
