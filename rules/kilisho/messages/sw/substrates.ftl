# of 71146b9d, reviewed: false
substrates-cattle_dung-name = Kinyesi cha ng'ombe, kibichi, cha ng'ombe wa maziwa wanaofugwa bandani
# of 03017fd8, reviewed: false
substrates-cattle_dung-handling-1 = Ondoa kwa mkono nyasi kavu, mabaki ya majani ya mifugo na mawe.
# of fab2cc19, reviewed: false
substrates-cattle_dung-handling-2 = Changanya na maji ya ujazo sawa, au mkojo na maji, hadi mabonge yaishe.
# of a730cfca, reviewed: false
substrates-cattle_dung-handling-3 = Kilishe siku ile ile kinapoanguka; gesi hupotea kwa kila siku kinachokaa kwenye lundo.
# of c5bdc46e, reviewed: false
substrates-local_cattle_dung-name = Kinyesi cha ng'ombe, kibichi, cha ng'ombe wa kienyeji wanaokula nyasi na majani makavu
# of 4d32a8c0, reviewed: false
substrates-local_cattle_dung-handling-1 = Kusanya zizini kila asubuhi, kabla hakijakauka na kukanyagwa.
# of 8b659239, reviewed: false
substrates-local_cattle_dung-handling-2 = Acha tabaka la chini kabisa lililochanganyika na udongo; hujaza tu mtambo wa biogesi mchanga.
# of 3da775e9, reviewed: false
substrates-local_cattle_dung-handling-3 = Loweka usiku kucha kinyesi chenye ganda kavu na uvunje mabonge.
# of 09025405, reviewed: false
substrates-buffalo_dung-name = Kinyesi cha nyati, kibichi
# of fbd052c4, reviewed: false
substrates-buffalo_dung-handling-1 = Acha wanyama wakauke baada ya kugaagaa kwenye matope ili matope yasiingie kwenye kinyesi.
# of 579ee002, reviewed: false
substrates-buffalo_dung-handling-2 = Changanya na maji ya ujazo sawa hadi mabonge yaishe.
# of 508944f8, reviewed: false
substrates-pig_manure-name = Kinyesi cha nguruwe, kibichi, bila mkojo
# of 00ba863e, reviewed: false
substrates-pig_manure-handling-1 = Acha mchanga utulie kwenye shimo la kuchanganyia na chota tope lililo juu yake.
# of c35d7d8e, reviewed: false
substrates-pig_manure-handling-2 = Anzisha mtambo wa biogesi kwa kinyesi cha ng'ombe na ingiza kinyesi cha nguruwe kidogo kidogo kwa wiki kadhaa, la sivyo mtambo huchacha.
# of 9282fe8a, reviewed: false
substrates-pig_manure-handling-3 = Hesabu maji ya kuoshea kama maji ya kuzimulia; yakizidi mara mbili ya ujazo wa kinyesi hufupisha muda wa kukaa kwa tope.
# of ff29f3ea, reviewed: false
substrates-layer_droppings-name = Kinyesi cha kuku wa mayai, kibichi, bila matandazo
# of 9a11fdf3, reviewed: false
substrates-layer_droppings-handling-1 = Ondoa manyoya, maganda ya mayai na mchanga; ponda kinyesi kikavu kabla ya kuchanganya.
# of b7b04ccc, reviewed: false
substrates-layer_droppings-handling-2 = Zimua hadi karibu 6 % ya yabisi jumla, isizidi hapo.
# of 6bca15ca, reviewed: false
substrates-layer_droppings-handling-3 = Changanya sehemu moja na sehemu tatu za kinyesi kingine; anza kwa kinyesi cha ng'ombe na ongeza sehemu hiyo kwa wiki kadhaa.
# of 4249a5bb, reviewed: false
substrates-broiler_litter-name = Samadi ya banda la kuku wa nyama: kinyesi pamoja na matandazo, kavu
# of e8a965f6, reviewed: false
substrates-broiler_litter-handling-1 = Usilishe samadi ya banda yenye randa za mbao au vumbi la mbao; haimeng'enywi na huziba mabomba.
# of 36d28739, reviewed: false
substrates-broiler_litter-handling-2 = Chekecha uondoe manyoya na mawe, kisha loweka kwa siku moja kwenye maji ya kuchanganyia.
# of c81ad528, reviewed: false
substrates-broiler_litter-handling-3 = Vaa barakoa unaposhika samadi kavu ya banda: vumbi lake hubeba vimelea vya magonjwa.
# of 20365dd9, reviewed: false
substrates-broiler_litter-handling-4 = Acha kuku wanaopewa dawa wamalize muda wa kusubiri baada ya dawa kabla samadi ya banda lao haijatumiwa.
# of 6cbd6e09, reviewed: false
substrates-goat_droppings-name = Kinyesi cha mbuzi, punje kutoka zizini
# of b76b4cba, reviewed: false
substrates-goat_droppings-handling-1 = Loweka kwa saa 12 hadi 24 na uponde: punje nzima huelea na kupita bila kumeng'enywa.
# of f6786d8b, reviewed: false
substrates-goat_droppings-handling-2 = Fagia kutoka sakafu ya mbao zenye nafasi au sakafu iliyofagiliwa, si kutoka udongo mtupu.
# of 07fa3a22, reviewed: false
substrates-goat_droppings-handling-3 = Anza kwa kinyesi cha ng'ombe au tope kutoka mtambo wa biogesi unaofanya kazi.
# of 69ea9e3c, reviewed: false
substrates-sheep_droppings-name = Kinyesi cha kondoo, punje kutoka zizini
# of b76b4cba, reviewed: false
substrates-sheep_droppings-handling-1 = Loweka kwa saa 12 hadi 24 na uponde: punje nzima huelea na kupita bila kumeng'enywa.
# of f6786d8b, reviewed: false
substrates-sheep_droppings-handling-2 = Fagia kutoka sakafu ya mbao zenye nafasi au sakafu iliyofagiliwa, si kutoka udongo mtupu.
# of 07fa3a22, reviewed: false
substrates-sheep_droppings-handling-3 = Anza kwa kinyesi cha ng'ombe au tope kutoka mtambo wa biogesi unaofanya kazi.
# of 53ffb512, reviewed: false
substrates-horse_dung-name = Kinyesi cha farasi, kibichi, chenye nyasi kidogo za kulalia
# of b110a34e, reviewed: false
substrates-horse_dung-handling-1 = Usiingize nyasi kavu za kulalia au zikate vipande vya sentimita chache; nyasi ndefu huelea na kufanya utando unaoelea.
# of 3fe67d46, reviewed: false
substrates-horse_dung-handling-2 = Vunja mabonge ndani ya maji ya kuchanganyia na uyaache yaloweke usiku kucha.
# of 61215485, reviewed: false
substrates-horse_dung-handling-3 = Anza kwa kinyesi cha ng'ombe, ambacho huleta vijidudu ambavyo kinyesi hiki hakina.
# of 723be7ef, reviewed: false
substrates-horse_dung-handling-4 = Usilishe kinyesi wakati wa matibabu ya dawa ya minyoo au antibayotiki na kwa wiki moja baadaye.
# of 2c26ff41, reviewed: false
substrates-donkey_dung-name = Kinyesi cha punda, kibichi, chenye nyasi kidogo za kulalia
# of b110a34e, reviewed: false
substrates-donkey_dung-handling-1 = Usiingize nyasi kavu za kulalia au zikate vipande vya sentimita chache; nyasi ndefu huelea na kufanya utando unaoelea.
# of 3fe67d46, reviewed: false
substrates-donkey_dung-handling-2 = Vunja mabonge ndani ya maji ya kuchanganyia na uyaache yaloweke usiku kucha.
# of 61215485, reviewed: false
substrates-donkey_dung-handling-3 = Anza kwa kinyesi cha ng'ombe, ambacho huleta vijidudu ambavyo kinyesi hiki hakina.
# of 723be7ef, reviewed: false
substrates-donkey_dung-handling-4 = Usilishe kinyesi wakati wa matibabu ya dawa ya minyoo au antibayotiki na kwa wiki moja baadaye.
# of ae243929, reviewed: false
substrates-rabbit_droppings-name = Kinyesi cha sungura, punje kutoka chini ya vibanda
# of c805e0a4, reviewed: false
substrates-rabbit_droppings-handling-1 = Loweka usiku kucha na uponde punje; punje nzima huelea.
# of 63bd3daf, reviewed: false
substrates-rabbit_droppings-handling-2 = Zuia manyoya na nyasi kavu za kibandani zisiingie.
# of 07fa3a22, reviewed: false
substrates-rabbit_droppings-handling-3 = Anza kwa kinyesi cha ng'ombe au tope kutoka mtambo wa biogesi unaofanya kazi.
# of ba43e25b, reviewed: false
substrates-human_excreta-name = Kinyesi cha binadamu kutoka choo kinachotiririsha kwenye mtambo wa biogesi
# of 8c73828e, reviewed: false
substrates-human_excreta-description = Kinyesi kama kinavyoanguka, pamoja na maji ya kusafishia ya choo cha kumwagia maji kama maji ya kuzimulia. Mkojo unaopita njia hiyo hiyo huongeza nitrojeni, na maji yake pia huongezeka.
# of 995c19c2, reviewed: false
substrates-human_excreta-handling-1 = Acha choo kitiririshe moja kwa moja kwenye mtambo wa biogesi; mtu yeyote asikishike wala kukikoroga.
# of 9086089e, reviewed: false
substrates-human_excreta-handling-2 = Tumia si zaidi ya lita moja ya maji ya kusafishia kwa kila matumizi na usitumie tanki la kusukumia maji.
# of d69c329c, reviewed: false
substrates-human_excreta-handling-3 = Zuia dawa ya klorini ya kusafishia, dawa kali za kusafishia, pedi na plastiki zisiingie kwenye bakuli la choo; weka mtego wa mchanga pale ambapo mawe hutumika kujisafishia.
# of f1aef2fd, reviewed: false
substrates-human_excreta-handling-4 = Tumia tope lililomeng'enywa kwenye miti na vichaka tu, kamwe si kwenye mboga zinazoliwa mbichi.
# of c6cdfa83, reviewed: false
substrates-cattle_urine-name = Mkojo wa ng'ombe, unaokusanywa kutoka sakafu yenye mfereji
# of ac55b225, reviewed: false
substrates-cattle_urine-handling-1 = Umimine kwenye shimo la kuchanganyia badala ya maji siku ile ile; amonia hupotea ndani ya saa chache.
# of 4953ba21, reviewed: false
substrates-cattle_urine-handling-2 = Usifikie kiasi kinachoshusha mchanganyiko chini ya sehemu 15 za kaboni kwa moja ya nitrojeni.
# of 0cfaf54f, reviewed: false
substrates-cattle_urine-handling-3 = Zuia maji ya kuosha sakafu yenye dawa ya kuua vimelea au dawa ya kuogesha mifugo yasiingie humo.
# of 71a0ade2, reviewed: false
substrates-maize_stover-name = Mabua ya mahindi, mashina na majani makavu
# of 815b1960, reviewed: false
substrates-maize_stover-handling-1 = Katakata vipande vya 2 hadi 6 cm; hata hivyo tarajia utando unaoelea.
# of 2abce0d7, reviewed: false
substrates-maize_stover-handling-2 = Usiweke sehemu nene za chini za shina, mizizi na sehemu ngumu kama mti.
# of 05b66e65, reviewed: false
substrates-maize_stover-handling-3 = Loweka kwa siku kadhaa pamoja na tope au kinyesi kabla ya kulisha.
# of 96559090, reviewed: false
substrates-maize_stover-handling-4 = Lisha pamoja na kinyesi tu, kamwe yasiwe malisho makuu ya mtambo wa biogesi unaolishwa mfululizo.
# of 8e6506a9, reviewed: false
substrates-wheat_straw-name = Majani makavu ya ngano
# of 815b1960, reviewed: false
substrates-wheat_straw-handling-1 = Katakata vipande vya 2 hadi 6 cm; hata hivyo tarajia utando unaoelea.
# of 05b66e65, reviewed: false
substrates-wheat_straw-handling-2 = Loweka kwa siku kadhaa pamoja na tope au kinyesi kabla ya kulisha.
# of 96559090, reviewed: false
substrates-wheat_straw-handling-3 = Lisha pamoja na kinyesi tu, kamwe yasiwe malisho makuu ya mtambo wa biogesi unaolishwa mfululizo.
# of e3666205, reviewed: false
substrates-rice_straw-name = Majani makavu ya mpunga
# of 815b1960, reviewed: false
substrates-rice_straw-handling-1 = Katakata vipande vya 2 hadi 6 cm; hata hivyo tarajia utando unaoelea.
# of 05b66e65, reviewed: false
substrates-rice_straw-handling-2 = Loweka kwa siku kadhaa pamoja na tope au kinyesi kabla ya kulisha.
# of 96559090, reviewed: false
substrates-rice_straw-handling-3 = Lisha pamoja na kinyesi tu, kamwe yasiwe malisho makuu ya mtambo wa biogesi unaolishwa mfululizo.
# of e3145381, reviewed: false
substrates-napier_grass-name = Majani ya tembo (napier), mabichi, yaliyokatwa yakiwa na karibu wiki sita
# of e4ea1b84, reviewed: false
substrates-napier_grass-handling-1 = Kata yakiwa na karibu siku 45; majani ya zamani zaidi hutoa chini ya nusu ya gesi.
# of 5acc9a53, reviewed: false
substrates-napier_grass-handling-2 = Katakata vipande vya 3 cm au vifupi zaidi na changanya na kinyesi cha uzito sawa.
# of 39004848, reviewed: false
substrates-napier_grass-handling-3 = Majani yaliyonyaushwa au ya saileji huzama vizuri kuliko mabichi.
# of 80e67afa, reviewed: false
substrates-banana_stem-name = Shina la mgomba, lililokatwakatwa
# of 6df88210, reviewed: false
substrates-banana_stem-handling-1 = Katakata kwa kukingamisha nyuzi vipande vya 2 hadi 3 cm; nyuzi ndefu hujiviringisha pamoja na kuziba mlango wa kuingizia.
# of 4c10a4f4, reviewed: false
substrates-banana_stem-handling-2 = Hesabu majimaji yake kama maji ya kuchanganyia.
# of e93c0d0b, reviewed: false
substrates-banana_stem-handling-3 = Lisha pamoja na kinyesi.
# of 50ac980f, reviewed: false
substrates-cassava_peel-name = Maganda ya muhogo, yaliyonyaushwa
# of 842c3a45, reviewed: false
substrates-cassava_peel-handling-1 = Tandaza kwa tabaka jembamba na yanyaushe kwa siku mbili hadi tatu, au yafanye saileji au yaloweke, ili kuondoa sianidi; fanya kazi mahali penye hewa wazi.
# of 93ea2373, reviewed: false
substrates-cassava_peel-handling-2 = Osha au kung'uta udongo, kisha ponda.
# of 95471d72, reviewed: false
substrates-cassava_peel-handling-3 = Ongeza sehemu yake polepole kwa wiki kadhaa, kila mara pamoja na kinyesi.
# of c9111107, reviewed: false
substrates-cassava_peel-handling-4 = Usiruhusu watu wala wanyama kunywa maji ya kulowekea.
# of d1e5304e, reviewed: false
substrates-potato_peel-name = Maganda ya viazi
# of b723d9a9, reviewed: false
substrates-potato_peel-handling-1 = Osha udongo na saga vipande vya 1 cm au vidogo zaidi.
# of f2775443, reviewed: false
substrates-potato_peel-handling-2 = Lisha kidogo kila siku pamoja na kinyesi; mzigo mmoja mkubwa huchachisha mtambo wa biogesi.
# of f8781220, reviewed: false
substrates-coffee_pulp-name = Nyama ya tunda la kahawa (pulp) kutoka usindikaji wa maji, bila ngozi ya punje
# of 49c59854, reviewed: false
substrates-coffee_pulp-handling-1 = Lisha ndani ya siku chache baada ya kukoboa; huchacha haraka kwenye lundo.
# of a3c1f3de, reviewed: false
substrates-coffee_pulp-handling-2 = Usiweke ngozi ya punje wala makapi makavu; karibu havimeng'enywi kabisa.
# of 3658f96f, reviewed: false
substrates-coffee_pulp-handling-3 = Iingize polepole mwanzoni mwa msimu na punguza uchachu wake kwa kinyesi.
# of f066b70c, reviewed: false
substrates-water_hyacinth-name = Magugu maji, mimea mizima, iliyokatwakatwa na kuchujwa maji
# of 0b7a9539, reviewed: false
substrates-water_hyacinth-handling-1 = Chuja maji, nyausha kwa siku moja hadi tatu na katakata vipande vya 2 hadi 5 cm.
# of 73bf4d2d, reviewed: false
substrates-water_hyacinth-handling-2 = Kata mizizi pale ambapo matope yameshikamana nayo.
# of 4c1dcfc3, reviewed: false
substrates-water_hyacinth-handling-3 = Usichukue mimea kutoka maji yanayopokea taka za viwanda: hujilimbikizia metali.
# of 705c2d59, reviewed: false
substrates-water_hyacinth-handling-4 = Jihadhari na nyoka na maji ya kina kirefu unapoikusanya.
# of d8ba6007, reviewed: false
substrates-kitchen_waste-name = Mabaki ya jikoni, yaliyochambuliwa, bila mifupa na vifungashio
# of 59212224, reviewed: false
substrates-kitchen_waste-handling-1 = Chambua uondoe mifupa, plastiki, vioo, maganda ya machungwa na ndimu na mabonge ya mafuta, kisha saga vipande vya 1 cm au vidogo zaidi.
# of ee9f3a05, reviewed: false
substrates-kitchen_waste-handling-2 = Lisha kidogo kila siku pamoja na kinyesi; acha kuyalisha tope linaponuka uchachu.
# of 2d0d3f56, reviewed: false
substrates-kitchen_waste-handling-3 = Mabaki yenye nyama hayapaswi kuwafikia wanyama njiani wala kupitia tope: fuata kanuni za mahali hapo za mazao ya ziada ya wanyama.
# of 9c90b471, reviewed: false
substrates-vegetable_waste-name = Mabaki ya mboga na ya sokoni, ya majani
# of b91a4fc9, reviewed: false
substrates-vegetable_waste-handling-1 = Chambua uondoe kamba, plastiki na udongo, na katakata vipande vya 2 cm.
# of 1f47ea24, reviewed: false
substrates-vegetable_waste-handling-2 = Yalishe yakiwa mabichi kila siku; malundo hugeuka asidi.
# of 015e81b2, reviewed: false
substrates-vegetable_waste-handling-3 = Usilishe mazao yaliyopuliziwa dawa katika siku za karibuni.
# of 43d1672c, reviewed: false
substrates-whey-name = Maji ya jibini kutoka utengenezaji wa jibini
# of d79bffbe, reviewed: false
substrates-whey-handling-1 = Punguza uchachu kwa ujazo mmoja hadi miwili ya tope la kinyesi na ongeza sehemu yake wiki kwa wiki.
# of 528bbeaa, reviewed: false
substrates-whey-handling-2 = Yalishe siku ile ile na kwa vipimo vidogo; fuatilia pH na acha kuyalisha inaposhuka.
# of 1ecdf187, reviewed: false
substrates-whey-handling-3 = Usiweke maji ya jibini ya ng'ombe waliotibiwa hadi muda wa kusubiri baada ya dawa uishe.
# of 866ea316, reviewed: false
substrates-rumen_content-name = Yaliyomo tumboni (kwenye rumeni) mwa ng'ombe waliochinjwa, kutoka wanyama waliokaguliwa
# of f03878fb, reviewed: false
substrates-rumen_content-handling-1 = Yachukue tu kutoka wanyama waliofaulu ukaguzi, na fuata kanuni za mahali hapo za mazao ya ziada ya wanyama.
# of 27051721, reviewed: false
substrates-rumen_content-handling-2 = Yalishe yakiwa mabichi; ni kianzishi bora kabisa.
# of 2f0734f5, reviewed: false
substrates-rumen_content-handling-3 = Vunja mkeka wa nyuzi kwenye shimo la kuchanganyia, na usiweke damu, mafuta, kwato na plastiki zilizomezwa na mnyama.
# of c7c79fb2, reviewed: false
substrates-rumen_content-handling-4 = Vaa glavu na buti, na funika vidonda.
