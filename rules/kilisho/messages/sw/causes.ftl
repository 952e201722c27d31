# of 03c56ee1, reviewed: false
causes-pipe_leaks-name = Bomba, vali au mpira wa gesi unavuja nje ya nyumba
# of cb6a5dcf, reviewed: false
causes-pipe_leaks-remedy = Funga vali ya mtambo, funga ungio upya kwa utepe wa kuziba au gundi ya kuziba, badilisha mpira wa gesi na bomba lenye ufa, na jaribu tena kwa maji ya sabuni. Mabomba na vifaa vya kudumu ndani ya nyumba hushughulikiwa na fundi wa gesi mwenye leseni.
# of c1cac0ac, reviewed: false
causes-leak_indoors-name = Gesi inavuja ndani ya chumba
# of 348bfbd8, reviewed: false
causes-leak_indoors-remedy = Toa watu wote nje, funga vali ya mtambo, pitisha hewa chumbani, na usitumie gesi yoyote hadi fundi wa gesi afunge ungio upya au abadilishe koki au mpira wa gesi, na maji ya sabuni yasionyeshe kitu.
# of 708f2c33, reviewed: false
causes-gas_line_holds_water-name = Maji yamesimama kwenye bomba la gesi
# of e445a2fe, reviewed: false
causes-gas_line_holds_water-remedy = Toa maji kwenye mtego, na laza bomba upya ili literemke bila kubonyea kuelekea mtambo au mtego; toa maji kwenye mtego kila wiki.
# of 7f54e1d6, reviewed: false
causes-burner_jet_blocked-name = Nozeli au matundu ya kichomeo yameziba
# of d56a7c99, reviewed: false
causes-burner_jet_blocked-remedy = Zibua kwa sindano na osha nozeli na matundu ya kichomeo, vikaushe, na safisha jiko kila wiki.
# of dc05eddd, reviewed: false
causes-too_little_air-name = Kichomeo kinapata hewa kidogo mno
# of b791e79d, reviewed: false
causes-too_little_air-remedy = Fungua mlango wa hewa wa kichomeo hadi mwali uwe mfupi na wa bluu, na hakikisha matundu ni safi na chumba kinapitisha hewa.
# of 37dc93c5, reviewed: false
causes-too_much_air-name = Kichomeo kinapata hewa nyingi mno
# of 16881f80, reviewed: false
causes-too_much_air-remedy = Funga kidogo mlango wa hewa wa kichomeo hadi mwali ukae kwenye kichomeo na ubaki wa bluu.
# of 0fd761ed, reviewed: false
causes-pressure_too_high_for_burner-name = Presha kwenye kichomeo ni kubwa mno
# of 0f4c21e5, reviewed: false
causes-pressure_too_high_for_burner-remedy = Punguza gesi kwa vali ya jiko wakati geji iko juu, pika kabla hifadhi ya gesi haijajaa, au mwambie fundi wa gesi aweke kirekebisha presha.
# of bc7adf4b, reviewed: false
causes-valve_part_shut-name = Vali imefungwa nusu au mpira wa gesi umekunjika
# of 9c8f1145, reviewed: false
causes-valve_part_shut-remedy = Fungua kila vali kikamilifu, nyoosha au fupisha mpira wa gesi, na badilisha vali isiyogeuka tena.
# of ac0f89f9, reviewed: false
causes-pipe_too_narrow-name = Bomba ni jembamba mno au refu mno
# of 81499120, reviewed: false
causes-pipe_too_narrow-remedy = Laza bomba la ukubwa unaofuata, lenye kona chache zaidi, au sogeza jiko karibu zaidi.
# of 173bdea5, reviewed: false
causes-unconverted_burner-name = Jiko au taa ilitengenezwa kwa ajili ya gesi nyingine
# of e094c11f, reviewed: false
causes-unconverted_burner-remedy = Tumia kichomeo kilichotengenezwa kwa ajili ya biogesi, au mwambie fundi wa gesi apanue nozeli na arekebishe hewa.
# of 463b47c6, reviewed: false
causes-kitchen_not_aired-name = Chumba chenye mwali hakipitishi hewa
# of 3c9ada84, reviewed: false
causes-kitchen_not_aired-remedy = Usitumie mwali wowote humo hadi chumba kiwe na matundu ya chini na ya juu ambayo hayawezi kufungwa; ondoa hita zisizo na bomba la moshi.
# of 8f701558, reviewed: false
causes-hydrogen_sulfide_high-name = Hidrojeni salfaidi nyingi kwenye gesi
# of bb765649, reviewed: false
causes-hydrogen_sulfide_high-remedy = Weka kichujio chenye oksidi ya chuma au pamba ya chuma na kiweke kipya kabla hakijaisha nguvu, pitisha hewa jikoni, na badilisha sehemu zenye kutu. Badilishia kichujio nje ya nyumba: kinaweza kupata joto chenyewe kikiwa kwenye hewa.
# of 37ec233e, reviewed: false
causes-slurry_in_line-name = Tope limeingia kwenye bomba la gesi
# of 53e13693, reviewed: false
causes-slurry_in_line-remedy = Funga vali ya mtambo miali yote ya moto ikiwa imezimwa, toa tope na suuza bomba nje ya nyumba, punguza malisho hadi kina kirudi kwenye alama yake, na angalia kama mlango wa kutolea umeziba au kuna povu.
# of cf9113c0, reviewed: false
causes-relief_seal_dry-name = Kizuizi cha maji cha kipunguza presha au mtego kimekauka
# of 9ac2989b, reviewed: false
causes-relief_seal_dry-remedy = Ukiwa nje ya nyumba, jaza maji kwenye kizuizi hadi kwenye alama yake na si kuipita, na kiangalie kila siku.
# of 205f00a6, reviewed: false
causes-relief_stuck-name = Kipunguza presha kimeziba, kimeganda au hakipo
# of eeabfffb, reviewed: false
causes-relief_stuck-remedy = Weka watu na miali ya moto mbali, achilia gesi nje ya nyumba sasa hivi, zibua au yeyusha barafu ya kipunguza presha ukiwa nje, na usiweke kizuizi chake cha maji kwa kina kinachozidi kile ambacho mtambo unahimili.
# of 74fa8cbd, reviewed: false
causes-air_in_first_gas-name = Bado kuna hewa kwenye gesi ya kwanza
# of a703ce92, reviewed: false
causes-air_in_first_gas-remedy = Usiwashe chochote. Nafasi ya gesi ikijaa kabisa, achilia gesi yote nje ya nyumba kwa mara ya kwanza au mbili za kwanza, bila kuichoma na mbali na mwali wowote, na baada ya hapo tu jaribu mwali kwenye jiko nje ya nyumba.
# of 71873f52, reviewed: false
causes-start_not_finished-name = Uanzishaji bado haujapata muda wa kutosha
# of 3b04fd53, reviewed: false
causes-start_not_finished-remedy = Subiri bila kulisha: wiki kadhaa mahali penye joto, hadi miezi mitatu mahali penye baridi. Anza kulisha, kidogo kwanza, gesi inapowaka kwa utulivu.
# of 4a9e236e, reviewed: false
causes-too_few_microbes-name = Vijidudu ni vichache mno tangu mwanzo
# of a45951c5, reviewed: false
causes-too_few_microbes-remedy = Acha kulisha na leta tope kutoka mtambo wa biogesi unaofanya kazi, moja ya kumi hadi moja ya tatu ya ujazo wa mtambo, au kinyesi kibichi cha ng'ombe; kisha subiri.
# of a62ca360, reviewed: false
causes-underfed-name = Mtambo unapata malisho kidogo mno
# of 843fdf64, reviewed: false
causes-underfed-remedy = Kusanya kinyesi zaidi: funga wanyama zizini usiku, weka sakafu safi na ngumu, shirikiana na jirani. Usiongeze malisho zaidi ya robo kwa wiki; la sivyo panga kwa gesi pungufu.
# of fc6119ff, reviewed: false
causes-overfed-name = Mtambo umelishwa kupita kiasi na unachacha
# of a5ea45d4, reviewed: false
causes-overfed-remedy = Acha kulisha kwa siku tatu hadi wiki moja, hadi pH na mwali virudi; ongeza kiasi cha tope la kinyesi kibichi cha ng'ombe; majivu ya kuni au maji ya chokaa polepole tu na mwisho kabisa. Kisha anza na nusu ya malisho.
# of 7de7fe05, reviewed: false
causes-quick_feed_soured-name = Malisho mapya au matamu yameuchachisha mtambo
# of 2591a668, reviewed: false
causes-quick_feed_soured-remedy = Acha kuweka malisho mapya, usilishe chochote kwa siku kadhaa kisha lisha kinyesi cha ng'ombe tu; rudisha malisho mapya kwa moja ya kumi ya yabisi na ongeza kwa wiki kadhaa.
# of e9e12441, reviewed: false
causes-ammonia_from_droppings-name = Amonia ya kinyesi cha kuku au mkojo inaurudisha mtambo nyuma
# of f44e1378, reviewed: false
causes-ammonia_from_droppings-remedy = Punguza kinyesi cha kuku na mkojo, ongeza kinyesi cha ng'ombe na maji, na weka nyasi kavu kidogo zilizokatwakatwa; mtambo unapona kwa wiki kadhaa kadiri tope linavyobadilishwa.
# of 7eb9c779, reviewed: false
causes-medicine_in_dung-name = Dawa iliyo kwenye kinyesi inarudisha nyuma vijidudu
# of 3ff09a7d, reviewed: false
causes-medicine_in_dung-remedy = Kwa wiki moja au zaidi baada ya dawa ya mwisho, usiingize kinyesi cha wanyama waliotibiwa, bali kifanye mboji; lisha kinyesi cha wanyama ambao hawajatibiwa; ongeza tope la kuanzishia kama gesi hairudi.
# of 54247b1e, reviewed: false
causes-disinfectant_in_feed-name = Dawa ya kuua vimelea, dawa ya kuogesha mifugo au sabuni inaua vijidudu kwa sumu
# of 07204b80, reviewed: false
causes-disinfectant_in_feed-remedy = Elekeza maji ya kuoshea yapite pembeni ya mtambo wa biogesi, usiweke kinyesi na maji ya siku zinazofuata usafishaji, na zimua kilicho ndani kwa malisho safi kwa siku kadhaa.
# of a8c72b54, reviewed: false
causes-too_much_water-name = Maji mengi mno yanaingia
# of 4f2f3de5, reviewed: false
causes-too_much_water-remedy = Kwa kinyesi cha ng'ombe changanya maji sawa na kinyesi, chimba mtaro kuzunguka milango ya mtambo, ifunike, na zuia maji ya kuoshea na mvua yasiingie.
# of 9da4ce05, reviewed: false
causes-slurry_too_thick-name = Tope ni zito mno
# of e585e01f, reviewed: false
causes-slurry_too_thick-remedy = Ongeza maji ndoo kwa ndoo na koroga kwa mti mrefu ukiwa nje; kuanzia sasa changanya maji na kinyesi kabla ya kulisha; tumia mkojo au majimaji yaliyotumika tena pale maji ni haba.
# of e8d9259b, reviewed: false
causes-irregular_feeding-name = Mtambo unalishwa bila mpangilio
# of c9f58c2c, reviewed: false
causes-irregular_feeding-remedy = Lisha kiasi kile kile kila siku saa ile ile; usifidie kamwe siku zilizokosa kwa mara moja.
# of f9e2fae1, reviewed: false
causes-cold_slurry-name = Tope ni la baridi
# of 0ca52f21, reviewed: false
causes-cold_slurry-remedy = Funika ardhi iliyo juu ya mtambo wa biogesi kwa nyasi kavu au tuta la udongo, au ujengee mfuko kibanda; changanya kwa maji yaliyopashwa joto na jua na lisha karibu na saa sita mchana; punguza malisho chini ya 15 °C, na usilishe kabisa chini ya 10.
# of 1e866aa4, reviewed: false
causes-scum_crust-name = Tabaka gumu la utando unaoelea linazuia gesi chini yake
# of e7b035ef, reviewed: false
causes-scum_crust-remedy = Miali yote ya moto ikiwa imezimwa, vunja tabaka gumu ukiwa nje kwa mti mrefu na koroga mara mbili kwa siku; pipa la gesi huzungushwa. Usiweke nyasi kavu na nyasi ndefu au zikatekate. Lisipovunjika, ita timu iliyofunzwa; mtu yeyote asiingie ndani.
# of 1c10ed93, reviewed: false
causes-foaming-name = Tope linatoa povu
# of 310e2a8c, reviewed: false
causes-foaming-remedy = Acha kulisha kwa siku kadhaa, usiweke mafuta, sabuni na majani mabichi, na koroga; toa kwenye bomba la gesi kilichovuka na kuingia humo.
# of 83184bbd, reviewed: false
causes-sand_and_sludge-name = Mchanga na mashapo vimejaa kwenye mtambo wa biogesi
# of eaba8d61, reviewed: false
causes-sand_and_sludge-remedy = Mashapo yatolewe na timu iliyofunzwa na yenye vifaa, na hifadhi moja ya kumi hadi moja ya tatu ya tope kama tope la kuanzishia. Baada ya hapo acha mchanganyiko utulie na uache mchanga kwenye shimo la kuchanganyia.
# of 1b022be0, reviewed: false
causes-dome_leaks_gas-name = Kuba au tanki linavuja gesi
# of c4489564, reviewed: false
causes-dome_leaks_gas-remedy = Fundi mwashi aliyefunzwa afungue ufa kutoka nje, auzibe na apake nafasi ya gesi upya. Kazi ya ndani husubiri hadi timu iliyofunzwa na yenye vifaa iwe imemwaga mtambo, imeupitisha hewa na imepima hewa yake.
# of 61012f76, reviewed: false
causes-lid_seal_leaks-name = Udongo wa mfinyanzi unaoziba mfuniko unavuja
# of 155f08ac, reviewed: false
causes-lid_seal_leaks-remedy = Miali yote ya moto ikiwa imezimwa, acha geji ishuke hadi sifuri kwa kuachilia gesi nje ya nyumba, kisha kandamiza udongo wa mfinyanzi upya, wekea mfuniko uzito na hakikisha maji yapo juu yake. Mtu yeyote asisimame juu ya mfuniko.
# of b8429a6f, reviewed: false
causes-tank_leaks_slurry-name = Tanki linavuja tope
# of 6880e70b, reviewed: false
causes-tank_leaks_slurry-remedy = Acha kulisha, weka alama mahali kina kinaposhuka hadi kufika (ufa uko juu kidogo tu ya hapo), na fundi mwashi na timu iliyofunzwa walimwage, walipitishe hewa na walitengeneze; kumbuka watu na visima vilivyo karibu.
# of d6ffb393, reviewed: false
causes-port_uncovered-name = Tope liko chini ya tundu la ndani la mlango na gesi inatoka
# of b4eec85e, reviewed: false
causes-port_uncovered-remedy = Zima miali yote ya moto, jaza tope au maji hadi angalau 20 cm juu ya matundu ya ndani ya milango, na toa kiasi kile tu kinachoingia.
# of 7fa45b63, reviewed: false
causes-bag_leaks-name = Mfuko umechanika au unavuja
# of 1c90a1e6, reviewed: false
causes-bag_leaks-remedy = Miali yote ya moto ikiwa imezimwa, bandika kiraka cha plastiki ile ile kwa joto au kwa gundi mahali pakavu na safi, kaza kola, zungushia uzio na uwekee kivuli dhidi ya jua.
# of 65da50c3, reviewed: false
causes-drum_leaks-name = Pipa la gesi linavuja
# of 96c016ad, reviewed: false
causes-drum_leaks-remedy = Funga vali, zima miali yote ya moto, achilia gesi nje ya nyumba, kisha ondoa kutu, lichomelee mbali na mtambo au libandike kiraka, na lipake rangi; lipake rangi kila mwaka.
# of fb007ae9, reviewed: false
causes-drum_stuck-name = Pipa la gesi limekwama
# of 07982604, reviewed: false
causes-drum_stuck-remedy = Miali yote ya moto ikiwa imezimwa, nasua reli ya kuongozea ukiwa ukingoni, vunja utando unaozunguka pipa la gesi, paka grisi kwenye reli na zungusha pipa la gesi mara mbili kwa siku.
# of 105ad0ab, reviewed: false
causes-inlet_blocked-name = Mlango wa kuingizia umeziba
# of e0b6a7c9, reviewed: false
causes-inlet_blocked-remedy = Sukuma kilichoziba kipite ukiwa nje kwa mti mrefu na maji, kisha lisha bila nyasi kavu na mabonge, kupitia chekecheo.
# of 7d8f9998, reviewed: false
causes-outlet_blocked-name = Mlango wa kutolea umeziba
# of 18532882, reviewed: false
causes-outlet_blocked-remedy = Acha kulisha, achilia gesi nje ya nyumba miali yote ya moto ikiwa imezimwa, na zibua mlango wa kutolea ukiwa nje kwa mti mrefu; mtu yeyote asisimame juu ya mfuniko.
# of fa234124, reviewed: false
causes-air_drawn_in-name = Hewa ilifyonzwa ndani ya gesi
# of a1350063, reviewed: false
causes-air_drawn_in-remedy = Zima miali yote ya moto, funga vali ya mtambo, jaza hadi kina cha kawaida, nafasi ya gesi itakapojaa tena achilia gesi yote nje ya nyumba bila kuichoma, na usiwashe chochote kabla ya hapo.
# of b1fe8b4a, reviewed: false
causes-gas_gathers_low-name = Gesi inakusanyika shimoni au mahali pa chini
# of a8f707e1, reviewed: false
causes-gas_gathers_low-remedy = Zuia watu wote wasiingie wala kukaribia, ita waokoaji waliofunzwa au timu iliyofunzwa, na waache wapitishe hewa; baadaye elekeza matundu ya kutolea gesi mbali na mahali pa chini, jaza au funika shimo na lizungushie uzio.
# of 3b904a37, reviewed: false
causes-gas_not_used_up-name = Gesi ni nyingi kuliko inayotumiwa
# of 81e6952d, reviewed: false
causes-gas_not_used_up-remedy = Tumia gesi kwa mlo mwingine, pasha maji kwa hita yenye bomba la moshi au mgawie jirani, au punguza malisho; gesi isiyochomwa hudhuru hali ya hewa ya dunia na inaweza kukusanyika inakotokea.
# of 6e3430b6, reviewed: false
causes-expectation_too_high-name = Mtambo unatoa kile ambacho malisho yake yanaweza kutoa
# of 542ff694, reviewed: false
causes-expectation_too_high-remedy = Hakuna kilichoharibika. Gesi zaidi inahitaji malisho mengi zaidi au bora zaidi, au mtambo wa biogesi wenye joto zaidi; la sivyo panga kupika milo michache zaidi kwa gesi.
