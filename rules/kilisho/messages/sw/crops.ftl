# of 637a42a5, reviewed: false
crops-maize-name = Mahindi
# of e09e8813, reviewed: false
crops-maize-handling-1 = Nusu kabla ya kupanda au wakati wa kupanda, kwenye mfereji na kufunikwa; nusu mimea inapofika magotini, kando ya mistari.
# of d6653e9b, reviewed: false
crops-sorghum_millet-name = Mtama, uwele na ulezi
# of 1b9bc7b7, reviewed: false
crops-rice-name = Mpunga
# of d8b1cc53, reviewed: false
crops-rice-handling-1 = Lichanganye tope kwenye udongo uliotolewa maji kabla ya kupandikiza miche; kwenye maji yaliyosimama sehemu kubwa ya amoniamu hupotea hewani.
# of 29fd9a2f, reviewed: false
crops-wheat-name = Ngano na shayiri
# of ef2a3220, reviewed: false
crops-beans-name = Maharagwe, kunde na jamii nyingine za mikunde
# of a0be691f, reviewed: false
crops-beans-handling-1 = Kwa zaidi yote, kidogo tu kabla ya kupanda; weka tope kwenye mazao yanayohitaji nitrojeni.
# of 6d61374d, reviewed: false
crops-potato-name = Viazi mviringo
# of 8f2576bd, reviewed: false
crops-potato-handling-1 = Kabla ya kupanda, na kufunikwa kwa udongo; usiweke kabisa viazi vinapoanza kutunga.
# of 54185dae, reviewed: false
crops-sweet_potato-name = Viazi vitamu
# of 6137697f, reviewed: false
crops-sweet_potato-handling-1 = Kabla ya kupanda tu; nitrojeni ya kuchelewa huzaa majani na mashina marefu.
# of b5cc7692, reviewed: false
crops-cassava-name = Muhogo
# of ba76ee85, reviewed: false
crops-leafy_vegetables-name = Mboga za majani (kabichi, sukuma wiki, mchicha, saladi)
# of d0d85409, reviewed: false
crops-leafy_vegetables-handling-1 = Ndani ya udongo kabla ya kupanda, kamwe si kwenye majani yatakayoliwa.
# of f2eb1050, reviewed: false
crops-tomato_pepper-name = Nyanya, pilipili na mboga nyingine za matunda
# of 8decb371, reviewed: false
crops-tomato_pepper-handling-1 = Ndani ya udongo kabla ya kupanda; mimea iliyosimikiwa vijiti huzuia matunda yasiguse udongo.
# of 9bb08573, reviewed: false
crops-root_vegetables-name = Karoti, vitunguu, viazisukari na figili
# of 8f7cd46d, reviewed: false
crops-root_vegetables-handling-1 = Kwenye zao linalotangulia badala ya kwenye mazao haya yenyewe.
# of 75464029, reviewed: false
crops-banana-name = Ndizi za kuiva na za kupika
# of 67e270ae, reviewed: false
crops-banana-description = Huchukuliwa kuwa huliwa mbichi; taja eaten_raw kuwa false pale ambapo ndizi zote hupikwa.
# of a785afa5, reviewed: false
crops-banana-handling-1 = Kwenye mtaro wa mviringo uliochimbwa kuzunguka shina la migomba na kufunikwa.
# of 0bc1f210, reviewed: false
crops-fruit_trees-name = Miti ya matunda (maembe, parachichi, machungwa na jamii yake, papai)
# of 3e8ebe7e, reviewed: false
crops-fruit_trees-handling-1 = Baada ya kuvuna, kwenye mtaro wa mviringo chini ya mwisho wa matawi na kufunikwa; matunda yaliyoanguka kwenye udongo uliowekwa tope si ya kuliwa mabichi.
# of b0e1f06c, reviewed: false
crops-coffee-name = Kahawa
# of 9705c298, reviewed: false
crops-coffee-handling-1 = Kwenye mtaro chini ya mwisho wa matawi, kwa awamu mbili au tatu wakati wa mvua.
# of 017979e8, reviewed: false
crops-tea-name = Chai
# of aa224535, reviewed: false
crops-tea-handling-1 = Baada ya kuchuma, kati ya mistari na kufunikwa.
# of ad32d6a3, reviewed: false
crops-sugarcane-name = Miwa
# of 341c5389, reviewed: false
crops-napier_grass-name = Majani ya tembo (napier)
# of d5e0cabc, reviewed: false
crops-napier_grass-handling-1 = Baada ya kila kukata, kando ya mistari; ukataji unaofuata uje baada ya muda wa kusubiri.
# of a0b4d70c, reviewed: false
crops-pasture-name = Machungio na nyasi za kukatwa
# of 5e6425a9, reviewed: false
crops-pasture-handling-1 = Kwenye nyasi fupi baada ya kukata au kuchungia; zuia wanyama wasiingie hadi muda wa kusubiri uishe.
