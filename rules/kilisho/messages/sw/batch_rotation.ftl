# of 88c565d0, reviewed: false
rotation-first-charge = Ujaze na uufunge. Achilia gesi ya kwanza hewani nje, bila kuichoma, na weka kila mwali mbali.
# of 1a4b614e, reviewed: false
rotation-recharge = Ujaze upya ukishakuwa mtupu, na uufunge. Ufungue tu bila presha na miali yote ikiwa imezimwa, uuingize hewa, ondoa tope ukiwa nje na usiingie kamwe. Achilia gesi ya kwanza hewani nje, bila kuichoma.
# of 131be986, reviewed: false
rotation-emptying = Ufungue tu bila presha na miali yote ikiwa imezimwa, uuingize hewa, ondoa tope ukiwa nje na usiingie kamwe.
# of b8bc281f, reviewed: false
rotation-first-day-unknown = Hakuna aliyesema ujazaji wa kwanza ni lini; majira yanahesabiwa kuanzia Mwaka Mpya.
