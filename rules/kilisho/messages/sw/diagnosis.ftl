# of b41e65bc, reviewed: false
diagnosis-gas-below = Gesi pungufu kuliko malisho haya yanavyotoa hata kwenye mtambo duni kuliko yote ya aina hiyo: tafuta uvujaji kwanza, kisha kuchacha, baridi, tabaka gumu la juu na mashapo, na pima kama malisho ni kweli yale yaliyotajwa.
# of 58cfb554, reviewed: false
diagnosis-gas-inside = Gesi iko ndani ya kile malisho haya yanachotoa katika mtambo huu, hivyo haihitaji hitilafu kuielezea. Gesi zaidi inahitaji malisho zaidi au bora au mtambo wenye joto zaidi; kupungua ndani ya kadirio hili bado kunaweza kuwa mwanzo wa tatizo.
# of 6a732288, reviewed: false
diagnosis-gas-above = Gesi zaidi kuliko malisho haya yanavyotoa: angalia kumbukumbu za malisho na gesi, na kizio cha mita.
# of f8180bd6, reviewed: false
diagnosis-gas-not-measured = Hakuna gesi iliyopimwa iliyotajwa, hivyo haiwezi kusemwa kama inakuja pungufu: soma mita au hesabu saa za kichomeo.
# of a2bbf02d, reviewed: false
diagnosis-gas-unknown = Gesi inayopaswa kuja haijulikani bila mtambo na malisho, hivyo haiwezi kusemwa kama inakuja pungufu.
# of 8dc13c4d, reviewed: false
diagnosis-statement = Mpangilio wa sababu ni makisio kutokana na yaliyotajwa, si ukweli uliothibitishwa: jaribu kabla ya kufungua au kujenga upya chochote, na kumbuka kwamba matatizo mawili yanaweza kuja pamoja. Ambalo hakuna aliyelitaja halijulikani na halitetei wala kupinga. Sehemu ni sehemu za uzito wa sababu zinazotetewa na jambo lililotajwa, na za jambo jingine. Mtu yeyote asiingie ndani ya mtambo au shimo, na mtu yeyote asitafute gesi kwa mwali.
# of 6606fc70, reviewed: false
diagnosis-not-met = Hayajatimizwa: { $title }
# of 065d470d, reviewed: false
diagnosis-act-at-once = Chukua hatua mara moja: { $names }.
# of 387b0c32, reviewed: false
diagnosis-likeliest = Yaliyotajwa yanatetea zaidi: { $name } ({ $share } ya uzito).
# of 95990c9f, reviewed: false
diagnosis-nothing-speaks = Hakuna lililotajwa linalotetea sababu yoyote ya kitabu cha kanuni; majaribio yaliyo hapa chini ni yale yanayotakiwa na sababu za kawaida.
# of 73f61bd2, reviewed: false
diagnosis-facts = { $names }
