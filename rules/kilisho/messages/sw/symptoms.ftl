# of b0dd5ef9, reviewed: false
symptoms-no_gas_after_start-name = Hakuna gesi tangu ujazo wa kwanza
# of f32958aa, reviewed: false
symptoms-no_gas_after_start-seen = Mtambo wa biogesi ulijazwa kwa mara ya kwanza na gesi haikuja, au ilikuja kidogo sana.
# of 6503d885, reviewed: false
symptoms-first_gas_does_not_burn-name = Gesi ya kwanza haiwaki
# of a0afbca7, reviewed: false
symptoms-first_gas_does_not_burn-seen = Mtambo mpya wa biogesi unatoa gesi na presha, lakini gesi inazima kiberiti au haiendelei kuwaka.
# of 48e2745c, reviewed: false
symptoms-gas_fell_slowly-name = Gesi ilipungua polepole
# of e03f518a, reviewed: false
symptoms-gas_fell_slowly-seen = Kwa wiki au miezi kadhaa jiko linawaka kwa muda mfupi zaidi na zaidi.
# of da964eca, reviewed: false
symptoms-gas_fell_suddenly-name = Gesi ilipungua ghafla
# of 7943d661, reviewed: false
symptoms-gas_fell_suddenly-seen = Kutoka siku moja hadi nyingine, au ndani ya wiki moja, gesi ilipungua sana.
# of 2425da96, reviewed: false
symptoms-gas_stopped-name = Gesi ilikoma kabisa
# of 75187931, reviewed: false
symptoms-gas_stopped-seen = Mtambo ulitoa gesi kwa muda mrefu na sasa hautoi kabisa.
# of 1e9d7882, reviewed: false
symptoms-gas_always_little-name = Gesi haijawahi kufikia kiasi kilichoahidiwa
# of 641a4c3b, reviewed: false
symptoms-gas_always_little-seen = Mtambo unafanya kazi, lakini gesi haijawahi kutosha milo iliyoahidiwa.
# of 0eb165e3, reviewed: false
symptoms-gas_falls_in_cold_season-name = Gesi hupungua katika msimu wa baridi tu
# of 3960baea, reviewed: false
symptoms-gas_falls_in_cold_season-seen = Kila mwaka gesi hupungua baridi inapoanza na hurudi miezi ya joto inapokuja.
# of 328702a4, reviewed: false
symptoms-gas_comes_in_waves-name = Gesi huja kwa vipindi
# of a69c93e0, reviewed: false
symptoms-gas_comes_in_waves-seen = Siku nyingine gesi ni nyingi, siku nyingine hakuna kabisa.
# of b39431ef, reviewed: false
symptoms-gas_steady_but_short-name = Gesi haibadiliki, lakini haitoshi
# of 4af24f70, reviewed: false
symptoms-gas_steady_but_short-seen = Gesi ni nyingi kama ilivyokuwa siku zote; milo, wageni au taa vimeongezeka, au haijawahi kutosha vyote.
# of 9624907a, reviewed: false
symptoms-gas_left_over-name = Gesi inabaki
# of 3287e7f8, reviewed: false
symptoms-gas_left_over-seen = Kaya haiwezi kumaliza gesi; inatoka kwa mapovu kwenye mlango wa kutolea au kipunguza presha.
# of 276325a8, reviewed: false
symptoms-gas_at_inlet_or_outlet-name = Mapovu ya gesi yanatoka kwenye mlango wa kuingizia au wa kutolea
# of 36a41091, reviewed: false
symptoms-gas_at_inlet_or_outlet-seen = Mapovu yanapanda kwenye mlango wa kuingizia au wa kutolea huku gesi kidogo tu ikifika kwenye jiko.
# of ab5072a5, reviewed: false
symptoms-hiss_or_bubbles_at_joint-name = Mlio wa gesi inayovuja au mapovu ya sabuni kwenye ungio
# of f231b196, reviewed: false
symptoms-hiss_or_bubbles_at_joint-seen = Mahali fulani kwenye bomba, vali au mpira wa gesi pana mlio wa gesi inayovuja, au maji ya sabuni yanafanya mapovu hapo.
# of 5936f63b, reviewed: false
symptoms-gas_smells_of_rotten_eggs-name = Harufu kali ya mayai yaliyooza
# of 54584c14, reviewed: false
symptoms-gas_smells_of_rotten_eggs-seen = Gesi, au mwali, inanuka sana kama mayai yaliyooza.
# of d690630d, reviewed: false
symptoms-flame_does_not_light-name = Mwali hauwaki
# of 9515e2d1, reviewed: false
symptoms-flame_does_not_light-seen = Vali ikiwa wazi na kiberiti kinachowaka kikiwa kwenye kichomeo, hakuna kinachowaka.
# of 8945609b, reviewed: false
symptoms-flame_weak-name = Mwali ni mdogo na dhaifu
# of 68f0c7c2, reviewed: false
symptoms-flame_weak-seen = Mwali ni wa bluu lakini mdogo, na kupika kunachukua muda mrefu sana kuliko zamani.
# of d7ff4c9a, reviewed: false
symptoms-flame_yellow-name = Mwali ni wa njano
# of 27db372e, reviewed: false
symptoms-flame_yellow-seen = Mwali ni wa njano au wa rangi ya chungwa na mrefu badala ya kuwa mfupi na wa bluu.
# of 98e3cf13, reviewed: false
symptoms-soot_on_pots-name = Masizi kwenye sufuria
# of 25a11af2, reviewed: false
symptoms-soot_on_pots-seen = Sufuria zinakuwa nyeusi kwa mwali wa gesi.
# of e0d82010, reviewed: false
symptoms-flame_lifts-name = Mwali unainuka kutoka kwenye kichomeo
# of 675d6dde, reviewed: false
symptoms-flame_lifts-seen = Mwali unakaa mbali na matundu ya kichomeo, unanguruma, na unajizima wenyewe.
# of affb6a5c, reviewed: false
symptoms-flame_goes_out-name = Mwali unazimika wenyewe
# of 9d02cf5d, reviewed: false
symptoms-flame_goes_out-seen = Unawaka, unaendelea kwa muda kisha unazimika.
# of bbf3eb28, reviewed: false
symptoms-flame_strikes_back-name = Mwali unarudi nyuma ndani ya kichomeo
# of ba644aac, reviewed: false
symptoms-flame_strikes_back-seen = Kwa kishindo mwali unaruka nyuma na kuwaka ndani ya kichomeo au kwenye nozeli.
# of f6bed6c9, reviewed: false
symptoms-flame_pulses-name = Mwali unarukaruka au kupwitapwita
# of 64055072, reviewed: false
symptoms-flame_pulses-seen = Mwali unakua na kupungua kwa mpigo, na geji inaruka pamoja nao.
# of d8baf516, reviewed: false
symptoms-stove_rusts-name = Jiko au taa inaliwa na kutu hadi kutoboka
# of 87efd5b6, reviewed: false
symptoms-stove_rusts-seen = Kichomeo, nozeli au taa vinaliwa na kutu ndani ya mwaka mmoja au miwili; shaba ya njano inageuka nyeusi.
# of 1f6202b9, reviewed: false
symptoms-pressure_high_no_flame-name = Presha ni kubwa, lakini hakuna mwali
# of 84146d5a, reviewed: false
symptoms-pressure_high_no_flame-seen = Geji iliyo kwenye mtambo inaonyesha presha kubwa, au mfuko au pipa la gesi limejaa, lakini gesi kidogo tu au hakuna kabisa inayotoka kwenye jiko.
# of adf87a48, reviewed: false
symptoms-pressure_zero-name = Presha inabaki sifuri
# of 43c875ba, reviewed: false
symptoms-pressure_zero-seen = Geji haipandi, au mfuko au pipa la gesi linabaki tupu, mchana na usiku.
# of 04757cf7, reviewed: false
symptoms-pressure_falls_overnight-name = Presha inashuka usiku
# of 0c8b1b81, reviewed: false
symptoms-pressure_falls_overnight-seen = Jioni kuna presha, asubuhi imekwisha ingawa hakuna aliyetumia gesi.
# of dc85efd2, reviewed: false
symptoms-bulging_bag_or_lid-name = Mfuko au mfuniko umevimba
# of f91d7a2c, reviewed: false
symptoms-bulging_bag_or_lid-seen = Mfuko umekazika kama ngozi ya ngoma, au mfuniko wa kuba unainuka, unavuja au umesogea.
# of 4d218ac3, reviewed: false
symptoms-slurry_level_falls-name = Kina cha tope kinashuka
# of a48def7f, reviewed: false
symptoms-slurry_level_falls-seen = Tope kwenye mlango wa kutolea linakuwa chini zaidi kila siku ingawa hakuna kilichotolewa.
# of 4d7a954a, reviewed: false
symptoms-outlet_overflows-name = Mlango wa kutolea unafurika
# of ec56b2ec, reviewed: false
symptoms-outlet_overflows-seen = Tope linamwagika juu ya ukingo wa mlango wa kutolea au wa tanki la kusawazisha.
# of 3e945463, reviewed: false
symptoms-outlet_not_flowing-name = Hakuna kinachotoka kwenye mlango wa kutolea
# of 422a5445, reviewed: false
symptoms-outlet_not_flowing-seen = Malisho yanaingia, lakini hakuna tope linalotoka mahali pa kufurikia.
# of 9386bc59, reviewed: false
symptoms-inlet_backs_up-name = Malisho yanakwama kwenye mlango wa kuingizia
# of 9a64c80b, reviewed: false
symptoms-inlet_backs_up-seen = Malisho yanasimama kwenye mlango wa kuingizia au shimo la kuchanganyia na hayashuki.
# of d3f0dbc9, reviewed: false
symptoms-slurry_thick-name = Tope ni zito
# of 04afb645, reviewed: false
symptoms-slurry_thick-seen = Malisho yaliyochanganywa au tope kwenye mlango wa kutolea limesimama kama uji mzito na halitiririki vizuri.
# of 495efed5, reviewed: false
symptoms-slurry_watery-name = Tope ni la majimaji
# of 10c19025, reviewed: false
symptoms-slurry_watery-seen = Kinachotoka ni chepesi na kimepauka kama maji machafu.
# of 1023c01c, reviewed: false
symptoms-scum_seen-name = Tabaka gumu la utando unaoelea
# of cc55f5d9, reviewed: false
symptoms-scum_seen-seen = Tabaka kavu au lililoshikamana kama mkeka linaelea juu ya tope; mti unagonga tabaka hilo.
# of 4607760f, reviewed: false
symptoms-foam-name = Povu
# of 932d6443, reviewed: false
symptoms-foam-seen = Povu limejaa kwenye mlango wa kutolea au linaingia kwenye bomba la gesi.
# of 09061ffe, reviewed: false
symptoms-sour_smell-name = Harufu ya uchachu
# of 7587835c, reviewed: false
symptoms-sour_smell-seen = Tope linanuka uchachu au kama matapishi, na linaweza kuonekana la kijivu.
# of 0a91c28c, reviewed: false
symptoms-ammonia_smell-name = Harufu kali ya amonia
# of b165a4c2, reviewed: false
symptoms-ammonia_smell-seen = Tope au mlango wa kutolea unawasha pua na macho kama banda la kuku.
# of 0c80170a, reviewed: false
symptoms-undigested_dung_comes_out-name = Tope linanuka kama kinyesi kibichi
# of bf6201bb, reviewed: false
symptoms-undigested_dung_comes_out-seen = Kinachotoka kinaonekana na kunuka kama kinyesi kibichi na kinavutia nzi.
# of 42bc7a39, reviewed: false
symptoms-sand_in_slurry-name = Mchanga kwenye tope
# of f0fd3846, reviewed: false
symptoms-sand_in_slurry-seen = Mchanga na mawe madogo yako kwenye shimo la kuchanganyia, mlango wa kutolea au tope.
# of 9fbf7179, reviewed: false
symptoms-slurry_in_gas_pipe-name = Tope kwenye bomba la gesi
# of 3f5986a2, reviewed: false
symptoms-slurry_in_gas_pipe-seen = Tope linatoka kwenye bomba la gesi, mtego au jiko.
# of b5834292, reviewed: false
symptoms-water_in_pipe-name = Maji kwenye bomba la gesi
# of 2263c596, reviewed: false
symptoms-water_in_pipe-seen = Bomba linagugumia, au maji yanatoka kwenye ungio, mtego au jiko.
# of b478809b, reviewed: false
symptoms-trap_or_relief_dry-name = Kizuizi cha maji kina maji kidogo
# of 49279743, reviewed: false
symptoms-trap_or_relief_dry-seen = Chupa au mtego unaoziba njia ya gesi una maji kidogo au hauna kabisa.
# of 13b85425, reviewed: false
symptoms-relief_blocked-name = Kipunguza presha kimeziba, kimeganda au kimejaa kupita kiasi
# of d3d1cd68, reviewed: false
symptoms-relief_blocked-seen = Kizuizi cha maji hakitoi mapovu kamwe ingawa hifadhi ya gesi imejaa; kimeganda au kimejaa hadi ukingoni, au bomba lake limeziba.
# of 3be1c2eb, reviewed: false
symptoms-relief_bubbles_always-name = Kipunguza presha kinatoa mapovu wakati wote
# of 25ec4f92, reviewed: false
symptoms-relief_bubbles_always-seen = Gesi inatoka kwa mapovu kupitia kizuizi cha maji mchana na usiku, hata wakati gesi ni kidogo.
# of 585310d7, reviewed: false
symptoms-crack_or_wet_patch-name = Ufa au mahali palipolowa
# of 60c625d7, reviewed: false
symptoms-crack_or_wet_patch-seen = Ujenzi wa uashi unaonyesha ufa, au udongo kando ya mtambo wa biogesi umelowa tope.
# of b38ae6e0, reviewed: false
symptoms-bubbles_over_dome-name = Mapovu au harufu juu ya kuba
# of 2d460c54, reviewed: false
symptoms-bubbles_over_dome-seen = Baada ya mvua, mapovu yanapanda kutoka kwenye udongo uliolowa juu ya kuba, au pananuka gesi hapo.
# of 766e749d, reviewed: false
symptoms-lid_seal_dry-name = Udongo wa mfinyanzi unaoziba mfuniko umekauka
# of 751fbad3, reviewed: false
symptoms-lid_seal_dry-seen = Udongo wa mfinyanzi unaozunguka mfuniko umekauka au umepasuka, au maji yaliyo juu ya mfuniko yamekwisha au yanatoa mapovu.
# of 9f2de31c, reviewed: false
symptoms-bag_slack_or_torn-name = Mfuko umelegea au umechanika
# of 615f263c, reviewed: false
symptoms-bag_slack_or_torn-seen = Mfuko umelegea, au unaonyesha tundu, mpasuko au mahali palipokauka na kuwa rahisi kupasuka.
# of 0540b865, reviewed: false
symptoms-drum_does_not_rise-name = Pipa la gesi halipandi
# of 59581ddf, reviewed: false
symptoms-drum_does_not_rise-seen = Pipa la gesi linaloelea linabaki chini ingawa mtambo wa biogesi unalishwa.
# of 4d1619b5, reviewed: false
symptoms-drum_sinks_quickly-name = Pipa la gesi linashuka haraka
# of dc692aea, reviewed: false
symptoms-drum_sinks_quickly-seen = Pipa la gesi linapanda kwa gesi na kushuka tena ndani ya saa chache bila gesi kutumiwa.
# of fbefad9e, reviewed: false
symptoms-drum_rusty-name = Pipa la gesi lina kutu
# of f7991b5b, reviewed: false
symptoms-drum_rusty-seen = Rangi inabanduka kwenye pipa la gesi, kutu inaonekana, au mapovu ya gesi yanatoka kwenye viungo vyake vya kuchomelea.
# of 5c045ef9, reviewed: false
symptoms-drum_tilted-name = Pipa la gesi limeinama au limekwama
# of 0c25dc51, reviewed: false
symptoms-drum_tilted-seen = Pipa la gesi limekaa upande au linakwama kwenye reli yake ya kuongozea na linasogea kwa kushtukashtuka.
# of 413a35cb, reviewed: false
symptoms-fed_more_than_usual-name = Mtambo umelishwa zaidi ya kawaida
# of 54fa3348, reviewed: false
symptoms-fed_more_than_usual-seen = Katika wiki za karibuni mtambo ulilishwa zaidi kuliko zamani.
# of 96153bd8, reviewed: false
symptoms-fed_less_than_usual-name = Mtambo umelishwa chini ya kawaida
# of 8febd633, reviewed: false
symptoms-fed_less_than_usual-seen = Wanyama wamepungua, kinyesi kimepungua, au kinatumiwa kwa kazi nyingine: mtambo unalishwa kidogo kuliko zamani.
# of 41cea249, reviewed: false
symptoms-feeding_irregular-name = Mtambo hulishwa mara moja moja
# of 1a189bee, reviewed: false
symptoms-feeding_irregular-seen = Unalishwa bila mpangilio: siku kadhaa bila kitu, kisha kingi kwa mara moja.
# of 209e6dba, reviewed: false
symptoms-feed_changed-name = Malisho mapya
# of 5e9e161b, reviewed: false
symptoms-feed_changed-seen = Kitu tofauti na cha zamani kiliingizwa: mabaki ya jikoni, matunda, maji ya jibini, kinyesi cha aina nyingine.
# of 77847f75, reviewed: false
symptoms-straw_fed-name = Nyasi kavu au nyasi kwenye malisho ya mtambo
# of 07b50112, reviewed: false
symptoms-straw_fed-seen = Nyasi za kulalia mifugo, nyasi kavu, majani au nyasi ndefu viliingia pamoja na kinyesi.
# of 97067202, reviewed: false
symptoms-droppings_or_urine_fed-name = Kinyesi kingi cha kuku au mkojo mwingi umeingizwa
# of 74b17c11, reviewed: false
symptoms-droppings_or_urine_fed-seen = Samadi ya kuku au nguruwe, au mkojo mwingi, ni sehemu kubwa ya malisho ya mtambo.
# of b88a257c, reviewed: false
symptoms-animals_treated-name = Wanyama walipewa dawa
# of b5ee3519, reviewed: false
symptoms-animals_treated-seen = Wanyama walipewa antibayotiki au dawa ya minyoo katika wiki za karibuni.
# of 3b665d48, reviewed: false
symptoms-disinfectant_or_soap-name = Dawa ya kuua vimelea, dawa ya kuogesha mifugo au sabuni imeingia
# of 4c15f2ba, reviewed: false
symptoms-disinfectant_or_soap-seen = Banda la mifugo au choo kilisafishwa kwa dawa ya kuua vimelea au sabuni, au wanyama waliogeshwa kwa dawa, na maji hayo yaliingia kwenye mtambo.
# of 204c2bff, reviewed: false
symptoms-much_water_or_rain-name = Maji mengi yameingia
# of 0cae0c0c, reviewed: false
symptoms-much_water_or_rain-seen = Mvua, maji ya kuoshea au maji ya kuchanganyia mengi sana kuliko kawaida yaliingia kwenye mtambo wa biogesi.
# of da63de26, reviewed: false
symptoms-little_water_used-name = Karibu hakuna maji yanayochanganywa
# of 5cd210af, reviewed: false
symptoms-little_water_used-seen = Maji ni haba, na kinyesi kinalishwa karibu kama kinavyoanguka.
# of ebeb14c4, reviewed: false
symptoms-not_emptied_for_years-name = Mtambo haujamwagwa kwa miaka mingi
# of 4250a22d, reviewed: false
symptoms-not_emptied_for_years-seen = Umefanya kazi kwa miaka mingi bila kuondolewa mchanga na mashapo.
# of 9c5071f9, reviewed: false
symptoms-cold_weather-name = Hali ya hewa ya baridi
# of 76bb0242, reviewed: false
symptoms-cold_weather-seen = Kumekuwa na baridi kwa wiki kadhaa, na tope ni la baridi likiguswa kwa mkono.
# of 7b8e478d, reviewed: false
symptoms-no_starter_used-name = Mtambo ulianzishwa bila tope la kuanzishia
# of 1a6507f9, reviewed: false
symptoms-no_starter_used-seen = Ulijazwa kwa mara ya kwanza bila tope kutoka mtambo wa biogesi unaofanya kazi, na si kwa kinyesi kibichi cha ng'ombe.
# of 2c2ea44f, reviewed: false
symptoms-recently_started-name = Mtambo ulijazwa hivi karibuni
# of 0d41dd63, reviewed: false
symptoms-recently_started-seen = Tangu ujazo wa kwanza zimepita siku au wiki chache tu.
# of 226b0ff4, reviewed: false
symptoms-just_emptied_or_repaired-name = Mtambo umemwagwa au kutengenezwa hivi karibuni
# of fb06777b, reviewed: false
symptoms-just_emptied_or_repaired-seen = Mtambo wa biogesi, mfuniko wake au bomba lake la gesi lilifunguliwa au kumwagwa hivi karibuni.
# of 05f26d8f, reviewed: false
symptoms-slurry_taken_out-name = Tope jingi limetolewa
# of 3f40a783, reviewed: false
symptoms-slurry_taken_out-seen = Tope jingi lilitolewa kwa mara moja kwenye mlango wa kutolea au kwenye mtambo wa biogesi.
# of 6b330895, reviewed: false
symptoms-new_stove_or_pipe-name = Jiko jipya au bomba jipya
# of 73609d60, reviewed: false
symptoms-new_stove_or_pipe-seen = Jiko, taa au bomba ni jipya, ni refu kuliko zamani, au lilitengenezwa kwa ajili ya gesi nyingine.
# of 5c7367fd, reviewed: false
symptoms-valve_or_hose_moved-name = Vali au mpira wa gesi uliguswa
# of e4cb0514, reviewed: false
symptoms-valve_or_hose_moved-seen = Mtu fulani aligeuza vali, au alihamisha jiko au mpira wake wa gesi, kabla ya tatizo kuanza.
# of 21e9d6c9, reviewed: false
symptoms-kitchen_closed-name = Chumba chenye mwali kimefungwa
# of 2cdc7e2f, reviewed: false
symptoms-kitchen_closed-seen = Milango na madirisha yamefungwa wakati mwali unawaka, na hakuna tundu ukutani linalobaki wazi.
# of b0d9ee5e, reviewed: false
symptoms-gas_not_used-name = Gesi haikutumiwa kwa siku kadhaa
# of ceacca7b, reviewed: false
symptoms-gas_not_used-seen = Hakuna mtu aliyepika kwa gesi kwa siku kadhaa.
# of e55403e5, reviewed: false
symptoms-gas_smell_indoors-name = Harufu ya gesi ndani ya nyumba
# of 17aa9dbf, reviewed: false
symptoms-gas_smell_indoors-seen = Jikoni au katika chumba kingine kunanuka gesi.
# of 2e85d182, reviewed: false
symptoms-gas_smell_in_pit-name = Harufu ya gesi shimoni au mahali pa chini
# of 0b7423a5, reviewed: false
symptoms-gas_smell_in_pit-seen = Kunanuka gesi au mayai yaliyooza ndani ya shimo, mlango wa kutolea au mahali pengine pa chini, au kando yake; au harufu ilikuwepo na imetoweka ghafla.
# of 715b3e2b, reviewed: false
symptoms-person_collapsed-name = Mtu ameanguka au kuzimia
# of 2810ec78, reviewed: false
symptoms-person_collapsed-seen = Mtu amelala bila nguvu au bila fahamu ndani ya shimo, mlango wa kutolea, mtambo wa biogesi au jikoni, au kando yake.
# of 33b1e8ab, reviewed: false
symptoms-headache_in_kitchen-name = Maumivu ya kichwa, kizunguzungu au kichefuchefu karibu na mwali
# of 4fe9e7ef, reviewed: false
symptoms-headache_in_kitchen-seen = Watu walio kwenye chumba chenye jiko, taa au hita wanaumwa kichwa, wanahisi kizunguzungu au kichefuchefu, na wanajisikia nafuu wakiwa nje.
# of 0fa4f343, reviewed: false
symptoms-fire_or_explosion-name = Moto au mlipuko
# of 0f5a1d7f, reviewed: false
symptoms-fire_or_explosion-seen = Gesi inawaka mahali isipopaswa, kitu kilicho karibu na gesi kinaungua, au kulisikika kishindo.
