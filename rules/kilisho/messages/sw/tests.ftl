# of 7272f4e6, reviewed: false
tests-gauge_overnight-name = Geji usiku kucha vali ya mtambo ikiwa imefungwa
# of 4a602bc4, reviewed: false
tests-gauge_overnight-how = Jioni funga vali iliyo kwenye mtambo wa biogesi, weka alama ya geji, kimo cha pipa la gesi au jinsi mfuko ulivyojaa, usitumie gesi yoyote, na soma tena asubuhi joto la tope likiwa lile lile.
# of fb8e1ed8, reviewed: false
tests-gauge_overnight-outcomes-1-seen = Inashuka ingawa vali ya mtambo imefungwa
# of 587f13b6, reviewed: false
tests-gauge_overnight-outcomes-2-seen = Haishuki usiku kucha, lakini inashuka vali ya mtambo ikiwa wazi na jiko likiwa limefungwa
# of c9cb6a1c, reviewed: false
tests-gauge_overnight-outcomes-3-seen = Haishuki kwa njia zote mbili
# of 1274d2b5, reviewed: false
tests-soapy_water-name = Maji ya sabuni kwenye maungio, vali na mfuniko
# of 71f45f0e, reviewed: false
tests-soapy_water-how = Wakati kuna presha, paka kwa brashi maji mazito ya sabuni kwenye kila ungio, vali, mpira wa gesi na kwenye kizibo cha mfuniko, na angalia kama kuna mapovu yanayokua. Maji ya sabuni na si kitu kingine chochote; ni marufuku kuwa na mwali au kuvuta sigara karibu. Ndani ya nyumba fungua milango na madirisha kwanza.
# of a6cda09b, reviewed: false
tests-soapy_water-outcomes-1-seen = Mapovu kwenye bomba au vali nje ya nyumba
# of e1e1791e, reviewed: false
tests-soapy_water-outcomes-2-seen = Mapovu kwenye ungio ndani ya nyumba
# of 0028cb43, reviewed: false
tests-soapy_water-outcomes-3-seen = Mapovu kwenye mfuniko au kwenye maji yaliyo juu yake
# of 9dd11c74, reviewed: false
tests-soapy_water-outcomes-4-seen = Hakuna mapovu popote
# of e7236469, reviewed: false
tests-drain_line-name = Toa kilicho ndani ya bomba la gesi
# of ecdf5cda, reviewed: false
tests-drain_line-how = Zima miali yote ya moto, funga vali ya mtambo, na fungua mtego au ungio la chini kabisa la bomba lililo nje ya nyumba. Kinga na uangalie kinachotoka, funga, na jaribu jiko tena.
# of d3f1eed5, reviewed: false
tests-drain_line-outcomes-1-seen = Maji yanatoka na baada ya hapo mwali unatulia
# of 214c2c7e, reviewed: false
tests-drain_line-outcomes-2-seen = Tope linatoka
# of df66bbda, reviewed: false
tests-drain_line-outcomes-3-seen = Hakuna kinachotoka
# of bc0d78cd, reviewed: false
tests-follow_the_line-name = Fuata bomba la gesi kwa miguu kutoka mtambo hadi jiko
# of a391bd58, reviewed: false
tests-follow_the_line-how = Angalia kila vali, kona na mpira wa gesi kutoka mtambo hadi jiko: je, kila vali imefunguliwa kikamilifu, je, mpira wa gesi umekunjika au kubanwa, je, bomba lina urefu na upana gani?
# of 0dd6c6bc, reviewed: false
tests-follow_the_line-outcomes-1-seen = Vali imefungwa nusu au mpira wa gesi umekunjika
# of 2108b2e8, reviewed: false
tests-follow_the_line-outcomes-2-seen = Kila kitu kiko wazi lakini bomba ni refu na jembamba
# of c5a63b75, reviewed: false
tests-follow_the_line-outcomes-3-seen = Kila kitu kiko wazi na bomba ni fupi na pana
# of 8297e4f3, reviewed: false
tests-clean_jet-name = Safisha nozeli na matundu ya kichomeo
# of 32dc00fa, reviewed: false
tests-clean_jet-how = Funga vali, acha kichomeo kipoe, kitoe, zibua nozeli na matundu kwa sindano, osha, kausha na ukirudishe. Kisha washa: kiberiti kwanza, vali baadaye.
# of df820dc3, reviewed: false
tests-clean_jet-outcomes-1-seen = Baada ya hapo mwali una nguvu na ni wa bluu
# of c75bb586, reviewed: false
tests-clean_jet-outcomes-2-seen = Mwali uko kama ulivyokuwa
# of bc2c2c1b, reviewed: false
tests-move_air_shutter-name = Sogeza mlango wa hewa wa kichomeo
# of e5cbc68f, reviewed: false
tests-move_air_shutter-how = Wakati mwali unawaka kwenye chumba kinachopitisha hewa, fungua kidogo mlango wa hewa wa kichomeo, kisha ufunge kidogo, na angalia rangi na urefu wa mwali.
# of dc9d8bc5, reviewed: false
tests-move_air_shutter-outcomes-1-seen = Hewa zaidi inafanya mwali wa njano uwe wa bluu
# of 54c73f6e, reviewed: false
tests-move_air_shutter-outcomes-2-seen = Hewa kidogo zaidi inatuliza mwali unaoinuka
# of 03868f51, reviewed: false
tests-move_air_shutter-outcomes-3-seen = Hakuna kinachobadilika sana
# of a9b2a72b, reviewed: false
tests-jet_for_which_gas-name = Jiko na nozeli vilitengenezwa kwa ajili ya gesi gani
# of 78a70ced, reviewed: false
tests-jet_for_which_gas-how = Soma kibati cha maelezo cha jiko au taa au uliza muuzaji: biogesi inahitaji nozeli pana zaidi na hewa zaidi kuliko gesi ya mtungi.
# of b18f6420, reviewed: false
tests-jet_for_which_gas-outcomes-1-seen = Ilitengenezwa kwa ajili ya gesi ya mtungi au gesi asilia na haikubadilishwa kamwe
# of 496158e1, reviewed: false
tests-jet_for_which_gas-outcomes-2-seen = Ilitengenezwa au kubadilishwa kwa ajili ya biogesi
# of ea9e88cd, reviewed: false
tests-throttle_the_valve-name = Punguza gesi kwa vali ya jiko
# of 405f975d, reviewed: false
tests-throttle_the_valve-how = Wakati mwali unawaka, punguza gesi polepole kwa kugeuza vali ya jiko.
# of a85b4663, reviewed: false
tests-throttle_the_valve-outcomes-1-seen = Mwali unatulia kwenye kichomeo
# of 2ffd0f43, reviewed: false
tests-throttle_the_valve-outcomes-2-seen = Mwali unabaki umeinuka au unazimika
# of e85752b4, reviewed: false
tests-blackened_metal-name = Pamba ya chuma inayong'aa au fedha kwenye gesi
# of 96107f1f, reviewed: false
tests-blackened_metal-how = Nje ya nyumba, ukiwa upande ambao upepo unatokea, kwa dakika moja shika pamba mpya ya chuma au sarafu ya fedha iliyong'arishwa kwenye gesi inayotoka kwenye kichomeo ambacho hakijawashwa, au vuta gesi kupitia mrija wa kupimia gesi.
# of 61eeb064, reviewed: false
tests-blackened_metal-outcomes-1-seen = Inageuka nyeusi papo hapo, au mrija unaonyesha zaidi ya 1000 ppm
# of 360323c1, reviewed: false
tests-blackened_metal-outcomes-2-seen = Inabaki inang'aa au mrija unaonyesha chini ya 200 ppm
# of 1c4c0a48, reviewed: false
tests-vent_and_try_again-name = Achilia gesi ya kwanza na jaribu tena
# of 575facf7, reviewed: false
tests-vent_and_try_again-how = Pasipo na mwali wowote ndani ya 10 m, achilia nje ya nyumba gesi yote ya nafasi ya gesi iliyojaa, bila kuichoma, mara moja au mbili, acha ijae tena, kisha jaribu mwali kwenye jiko nje ya nyumba.
# of 1ae3d175, reviewed: false
tests-vent_and_try_again-outcomes-1-seen = Inawaka baada ya kujaa mara ya pili
# of 950e6999, reviewed: false
tests-vent_and_try_again-outcomes-2-seen = Bado haiwaki
# of 2c6d0b71, reviewed: false
tests-days_since_filling-name = Hesabu siku tangu kujazwa
# of b3cb0308, reviewed: false
tests-days_since_filling-how = Hesabu siku tangu ujazo wa kwanza, gusa kujua tope lina joto kiasi gani, na uliza lilijazwa nini.
# of ea5d19a4, reviewed: false
tests-days_since_filling-outcomes-1-seen = Chini ya wiki tatu, au hadi miezi mitatu mahali penye baridi; ulijazwa kinyesi cha ng'ombe au tope la kuanzishia
# of a757a658, reviewed: false
tests-days_since_filling-outcomes-2-seen = Muda mrefu zaidi, au ulijazwa kinyesi cha kuku au mimea bila tope la kuanzishia
# of de7ac728, reviewed: false
tests-weigh_the_feed-name = Pima uzito wa malisho ya wiki moja
# of 7f472312, reviewed: false
tests-weigh_the_feed-how = Pima uzito wa kinyesi na maji ya kila ulishaji kwa wiki moja na linganisha na malisho yaliyopangwa ya mtambo huu wa biogesi; andika siku ambazo haukulishwa.
# of 6bc3fcac, reviewed: false
tests-weigh_the_feed-outcomes-1-seen = Kidogo kuliko malisho yaliyopangwa
# of 6de80237, reviewed: false
tests-weigh_the_feed-outcomes-2-seen = Zaidi ya malisho yaliyopangwa
# of 2a7896c6, reviewed: false
tests-weigh_the_feed-outcomes-3-seen = Karibu sawa na malisho yaliyopangwa, lakini bila mpangilio
# of 4c2e739b, reviewed: false
tests-weigh_the_feed-outcomes-4-seen = Kama ilivyopangwa kila siku
# of cc87b199, reviewed: false
tests-gas_against_feed-name = Pima gesi ya wiki moja dhidi ya malisho yake
# of a6453ef8, reviewed: false
tests-gas_against_feed-how = Soma mita, au hesabu saa za kila kichomeo kwa kiwango chake kinachojulikana, kwa wiki moja ambayo malisho yamepimwa uzito, na linganisha na gesi ambayo malisho hutoa.
# of d425a653, reviewed: false
tests-gas_against_feed-outcomes-1-seen = Ni nyingi kama ile ambayo malisho hutoa
# of ab7ff3ad, reviewed: false
tests-gas_against_feed-outcomes-2-seen = Ni kidogo kwa wazi
# of d0396f23, reviewed: false
tests-ph_of_slurry-name = pH ya tope bichi
# of dfc1f65b, reviewed: false
tests-ph_of_slurry-how = Chota tope kwenye mlango wa kutolea kwa kata yenye mpini mrefu na uweke karatasi ya pH au kipimo cha pH ndani yake papo hapo; fanya hivyo kwa siku tatu.
# of ec85992b, reviewed: false
tests-ph_of_slurry-outcomes-1-seen = Chini ya 6.8 au inashuka
# of 840451d7, reviewed: false
tests-ph_of_slurry-outcomes-2-seen = 6.8 hadi 8
# of 5f21691e, reviewed: false
tests-ph_of_slurry-outcomes-3-seen = Zaidi ya 8
# of 1642ead1, reviewed: false
tests-ask_about_feed-name = Uliza kilichoingizwa, siku kwa siku
# of 7cd51cd1, reviewed: false
tests-ask_about_feed-how = Pitia mwezi uliopita pamoja na kila mtu anayelisha mtambo au kufanya usafi: malisho mapya, viasi, dawa, dawa ya kuogesha mifugo, dawa ya kuua vimelea, sabuni, maji ya kuoshea na mvua, pamoja na siku zake.
# of 533e9f26, reviewed: false
tests-ask_about_feed-outcomes-1-seen = Dawa zilitolewa kwa wanyama na baadaye gesi ilipungua
# of 380cd107, reviewed: false
tests-ask_about_feed-outcomes-2-seen = Dawa ya kuua vimelea, dawa ya kuogesha mifugo au sabuni iliingia na baadaye gesi ilipungua
# of fd902ef8, reviewed: false
tests-ask_about_feed-outcomes-3-seen = Malisho mapya au matamu yaliingia na baadaye gesi ilipungua
# of 3182357e, reviewed: false
tests-ask_about_feed-outcomes-4-seen = Hakuna kitu cha aina hiyo
# of b09dc0f3, reviewed: false
tests-ammonia_strip-name = Amonia kwenye tope
# of ba124946, reviewed: false
tests-ammonia_strip-how = Zimua tope la mlango wa kutolea mara kumi, chovya ukanda wa kupimia amoniamu, na zidisha kwa kumi; jumlisha sehemu ya kinyesi cha kuku na mkojo kwenye malisho.
# of d8137b5d, reviewed: false
tests-ammonia_strip-outcomes-1-seen = Zaidi ya 3 g/L, au kinyesi kingi cha kuku au mkojo mwingi kwenye malisho
# of 6cba2f8a, reviewed: false
tests-ammonia_strip-outcomes-2-seen = Chini ya 1.5 g/L
# of 3e55ce88, reviewed: false
tests-pour_the_mix-name = Mimina malisho yaliyochanganywa
# of 25ad4804, reviewed: false
tests-pour_the_mix-how = Inua kijiti kutoka kwenye malisho yaliyochanganywa na uangalie: mchanganyiko mzuri hutiririka kama uji mwepesi. Linganisha ndoo za maji na ndoo za kinyesi.
# of bd7d74e0, reviewed: false
tests-pour_the_mix-outcomes-1-seen = Unang'ang'ania kijiti au unaanguka kwa mabonge
# of 962a08bc, reviewed: false
tests-pour_the_mix-outcomes-2-seen = Unadondoka kama maji
# of 9c24dd97, reviewed: false
tests-pour_the_mix-outcomes-3-seen = Unatiririka polepole na kwa usawa
# of 51ae56ff, reviewed: false
tests-slurry_thermometer-name = Joto la tope
# of e2e5f7d6, reviewed: false
tests-slurry_thermometer-how = Shusha kipimajoto kilicho ndani ya chupa yenye uzito hadi kwenye tope kupitia mlango wa kuingizia, au pima ndoo ya tope linapotoka.
# of c5095bb5, reviewed: false
tests-slurry_thermometer-outcomes-1-seen = Chini ya 15 °C, au nyuzi kadhaa baridi zaidi kuliko katika miezi mizuri
# of cbac40c8, reviewed: false
tests-slurry_thermometer-outcomes-2-seen = 20 °C au joto zaidi
# of 617a293d, reviewed: false
tests-dip_rod-name = Chunguza kwa fimbo ndefu ukiwa nje
# of 63ffaf51, reviewed: false
tests-dip_rod-how = Ukiwa umesimama wima nje na miali yote ya moto ikiwa imezimwa, shusha fimbo ndefu iliyonyooka kupitia mlango wa kuingizia au tundu la mtambo: sikiliza kwa mkono mahali tabaka gumu linapoanzia na mahali fimbo inapogonga mchanga.
# of 24da473b, reviewed: false
tests-dip_rod-outcomes-1-seen = Tabaka gumu la juu ni nene kuliko upana wa mkono
# of ef1fd964, reviewed: false
tests-dip_rod-outcomes-2-seen = Fimbo inaishia juu sana ya kina kilichojengwa, kwenye mchanga au mashapo
# of 64d8784e, reviewed: false
tests-dip_rod-outcomes-3-seen = Hakuna tabaka gumu la juu wala mashapo
# of d60dbbfc, reviewed: false
tests-level_after_a_day-name = Kina cha tope baada ya siku moja
# of c53f47bf, reviewed: false
tests-level_after_a_day-how = Achilia gesi hadi geji ifike sifuri, weka alama ya kina cha tope kwenye mlango wa kutolea, usilishe wala usitoe kitu kwa mchana mmoja na usiku mmoja, na angalia tena.
# of 409eb982, reviewed: false
tests-level_after_a_day-outcomes-1-seen = Kimeshuka
# of 73f07cc2, reviewed: false
tests-level_after_a_day-outcomes-2-seen = Kiko kwenye alama, lakini tundu la ndani la mlango wa kuingizia au wa kutolea liko wazi au karibu wazi
# of 2b172a0d, reviewed: false
tests-level_after_a_day-outcomes-3-seen = Kiko kwenye alama na matundu ya ndani ya milango yamefunikwa vizuri
# of 72fa8933, reviewed: false
tests-rod_in_inlet-name = Sukuma mti mrefu kupitia mlango wa kuingizia
# of 18bd7330, reviewed: false
tests-rod_in_inlet-how = Ukiwa umesimama wima nje, sukuma mti mrefu chini kwenye bomba la mlango wa kuingizia na mimina ndoo ya maji baada yake.
# of 96418c23, reviewed: false
tests-rod_in_inlet-outcomes-1-seen = Mti unagonga kitu kilichoziba na baada ya hapo maji yanashuka
# of ae2743f8, reviewed: false
tests-rod_in_inlet-outcomes-2-seen = Mti unapita bila kizuizi
# of b1742a65, reviewed: false
tests-rod_in_outlet-name = Sukuma mti mrefu kupitia mlango wa kutolea
# of 365f318e, reviewed: false
tests-rod_in_outlet-how = Miali yote ya moto ikiwa imezimwa na pasipo na mtu yeyote juu ya mfuniko, sukuma mti mrefu ukiwa nje ndani ya mlango wa kutolea na angalia kama tope linasogea.
# of efbc7eed, reviewed: false
tests-rod_in_outlet-outcomes-1-seen = Kilichoziba kinaachia na tope linatiririka
# of 77d0a3c4, reviewed: false
tests-rod_in_outlet-outcomes-2-seen = Njia iko wazi
# of 5562bae1, reviewed: false
tests-look_at_water_seal-name = Angalia kipunguza presha na mtego
# of 6e3ecfc2, reviewed: false
tests-look_at_water_seal-how = Angalia maji kwenye chupa ya kipunguza presha na kwenye mtego: yako wapi kulinganisha na alama yake, je, yanatoa mapovu, je, gesi inaweza kutoka kwa presha ambayo yamewekwa?
# of d083737f, reviewed: false
tests-look_at_water_seal-outcomes-1-seen = Chini ya alama au makavu
# of f613b27f, reviewed: false
tests-look_at_water_seal-outcomes-2-seen = Kimejaa kupita kiasi, kimeganda, au bomba linaloelekea humo limeziba
# of 7f5c2a0f, reviewed: false
tests-look_at_water_seal-outcomes-3-seen = Kwenye alama na mapovu yanatoka tu hifadhi ya gesi inapojaa
# of d039e502, reviewed: false
tests-look_at_bag-name = Kagua mfuko wote
# of 99b388b7, reviewed: false
tests-look_at_bag-how = Zunguka mfuko mchana kwenye mwanga, tafuta matundu, sehemu zilizokauka na kuwa rahisi kupasuka na kola zilizolegea, na paka hapo maji ya sabuni kwa brashi.
# of e126782e, reviewed: false
tests-look_at_bag-outcomes-1-seen = Tundu, mpasuko, au mapovu kwenye maji ya sabuni
# of 2e8580c2, reviewed: false
tests-look_at_bag-outcomes-2-seen = Mzima na hauvuji
# of a06eac7d, reviewed: false
tests-turn_drum-name = Zungusha pipa la gesi
# of 9cf2b421, reviewed: false
tests-turn_drum-how = Miali yote ya moto ikiwa imezimwa, zungusha pipa la gesi kwa vishikio vyake ukiwa ukingoni; usisimame kamwe juu yake. Kisha kagua viungo vya kuchomelea na maji yanayolizunguka kwa maji ya sabuni.
# of 0552aec4, reviewed: false
tests-turn_drum-outcomes-1-seen = Lilikuwa limekwama na linapanda baada ya kuzungushwa
# of b2edf2b9, reviewed: false
tests-turn_drum-outcomes-2-seen = Linazunguka bila shida na mapovu yanaonekana kwenye kiungo cha kuchomelea
# of 8543eea9, reviewed: false
tests-turn_drum-outcomes-3-seen = Linazunguka bila shida na halivuji
# of 978ccc08, reviewed: false
tests-gauge_at_zero-name = Geji wakati gesi inatumiwa
# of 39a77d5b, reviewed: false
tests-gauge_at_zero-how = Miali yote ya moto ikiwa imezimwa, angalia geji wakati tope linatolewa au gesi inaachiliwa nje ya nyumba: je, inashuka hadi sifuri au chini yake?
# of e43db4d5, reviewed: false
tests-gauge_at_zero-outcomes-1-seen = Inashuka hadi sifuri au chini yake, au mfuko unafyonzwa hadi kuwa bapa
# of 97fe4b8d, reviewed: false
tests-gauge_at_zero-outcomes-2-seen = Inabaki juu ya sifuri
# of 64a96a5a, reviewed: false
tests-foam_settles-name = Povu ndani ya ndoo
# of d2c53ba6, reviewed: false
tests-foam_settles-how = Chota povu na tope kwenye mlango wa kutolea kwa kata yenye mpini mrefu, koroga ndani yake konzi moja ya majivu au tope la kinyesi kibichi cha ng'ombe, na subiri robo saa.
# of d9843447, reviewed: false
tests-foam_settles-outcomes-1-seen = Linabaki kama povu gumu
# of c3d77b9e, reviewed: false
tests-foam_settles-outcomes-2-seen = Ni mkeka wa nyasi kavu na kinyesi tu
# of 07485712, reviewed: false
tests-gas_meter_by_trained-name = Kipima gesi mikononi mwa timu iliyofunzwa
# of c2c98305, reviewed: false
tests-gas_meter_by_trained-how = Weka kila mtu mbali na iache timu iliyofunzwa yenye kipima gesi cha oksijeni, methani na hidrojeni salfaidi ipime mahali hapo pa chini ikiwa nje, kwa kamba na kamwe si kwa kuingia ndani. Mtu yeyote asipime kwa pua, mnyama au mwali wa moto.
# of 11e0f150, reviewed: false
tests-gas_meter_by_trained-outcomes-1-seen = Kipima gesi kinaonyesha gesi au oksijeni kidogo
# of d9f3cad4, reviewed: false
tests-gas_meter_by_trained-outcomes-2-seen = Kipima gesi kinaonyesha hewa safi sasa
# of e1fbb3a1, reviewed: false
tests-look_at_vents-name = Angalia matundu ya hewa ya jikoni
# of c66f0ba5, reviewed: false
tests-look_at_vents-how = Angalia kama chumba chenye mwali kina matundu ya chini na ya juu ambayo hayawezi kufungwa, na kama hita isiyo na bomba la moshi inawaka humo.
# of fe1c4603, reviewed: false
tests-look_at_vents-outcomes-1-seen = Matundu hayafiki mawili, au hita isiyo na bomba la moshi
# of d907c2e0, reviewed: false
tests-look_at_vents-outcomes-2-seen = Matundu ya chini na ya juu na hakuna hita isiyo na bomba la moshi
