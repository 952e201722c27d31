# of 938499fd, reviewed: false
checks-cooked_crops_wait-title = Mwezi mmoja unapita kati ya kuweka tope na kuvuna mazao yanayopikwa
# of d5fb6c42, reviewed: false
checks-cooked_crops_wait-why = Ilionekana kwamba vimelea vingi vya magonjwa vya samadi huishi karibu mwezi mmoja kwenye udongo, na mikono mitupu na vikapu hugusa kile kitakachopikwa baadaye.
# of 694bbab2, reviewed: false
checks-cooked_crops_wait-do = Weka tope kabla ya kupanda au wakati mazao yangali machanga.
# of a8d48b3f, reviewed: false
checks-fodder_wait-title = Wiki sita zinapita kati ya kuweka tope na kukata majani ya mifugo au kuchungia mifugo hapo
# of d9590ac9, reviewed: false
checks-fodder_wait-why = Vimelea vya magonjwa na mayai ya minyoo hurudi kwa mifugo pamoja na majani.
# of 75436095, reviewed: false
checks-fodder_wait-do = Sambaza tope mara tu baada ya kukata majani au kuchungia mifugo, na zuia mifugo isiingie hadi muda wa kusubiri uishe.
# of c4f35028, reviewed: false
checks-nitrogen_limit_elsewhere_kept-title = Hakuna shamba linalopata zaidi ya 170 kg za nitrojeni ya samadi kwa hekta kwa mwaka
# of 73eeb0f8, reviewed: false
checks-nitrogen_limit_elsewhere_kept-why = Kinachozidi kile ambacho mazao yanaweza kuchukua huoshwa hadi kwenye visima na vijito kama nitreti.
# of 71859e4e, reviewed: false
checks-nitrogen_limit_elsewhere_kept-do = Fuata kwanza kanuni ya mahali hapo; kama haipo, sambaza kwenye eneo kubwa zaidi, kwa vipimo vidogo zaidi wakati mazao yanakua.
# of e86066cc, reviewed: false
checks-slurry_store_holds-title = Hifadhi ya tope inatosha tope linalokusanyika kati ya usambazaji mmoja na mwingine
# of 1274e0f2, reviewed: false
checks-slurry_store_holds-why = Hifadhi inayofurika hupeleka tope kwenye visima na vijito, na kusambaza kwa haraka kwenye ardhi tupu au yenye maji mengi hulipoteza bure.
# of 758c6956, reviewed: false
checks-slurry_store_holds-do = Ijenge iwe kubwa zaidi, au sambaza mara nyingi zaidi kwenye mazao yanayokua mwaka mzima, kama majani ya tembo (napier) au migomba.
# of 41040968, reviewed: false
checks-no_flame_at_digester-title = Hakuna mwali wa wazi wala moto ndani ya 5 m kutoka mtambo wa biogesi
# of ab4c4e18, reviewed: false
checks-no_flame_at_digester-why = Gesi inayovuja hushika moto na mwali hurudi hadi kwenye mtambo.
# of 7fa4d107, reviewed: false
checks-no_flame_at_digester-do = Zima au ondoa moto sasa hivi, na uweke umbali wa 5 m kutoka kila sehemu iliyo na gesi.
# of cb3a769c, reviewed: false
checks-first_flame_not_at_digester-title = Mwali wa kwanza hauwashwi kamwe kwenye mtambo wa biogesi, bomba lake, mlango wake wa kuingizia au wa kutolea
# of f40a9ee1, reviewed: false
checks-first_flame_not_at_digester-why = Gesi ya kwanza imechanganyika na hewa, na mwali mahali hapo unaweza kurudi ndani na kulipua mtambo.
# of caf8e55e, reviewed: false
checks-first_flame_not_at_digester-do = Washa kwenye kifaa cha gesi tu, mwishoni mwa bomba.
# of ba6a07db, reviewed: false
checks-first_flame_outdoors-title = Mwali wa kwanza unajaribiwa kwenye jiko lililo nje ya nyumba
# of d06665f3, reviewed: false
checks-first_flame_outdoors-why = Gesi ya kwanza inaweza kuwa na hewa, na gesi nyingi ambayo haijachomwa hutoka kabla mwali haujatulia.
# of 935e73ed, reviewed: false
checks-first_flame_outdoors-do = Peleka jiko nje kwa jaribio la kwanza, huku mpira wa gesi ukiwa umenyooshwa urefu wake wote.
# of 0dbca6ce, reviewed: false
checks-first_flame_distance-title = Mwali wa kwanza unajaribiwa angalau 10 m kutoka mtambo wa biogesi
# of 28818b49, reviewed: false
checks-first_flame_distance-why = Gesi iliyo kuzunguka mtambo na hewa iliyo ndani ya bomba zinaweza kushika moto.
# of 3eb7abdb, reviewed: false
checks-first_flame_distance-do = Sogeza jiko hadi 10 m au zaidi, na weka kizuia mwali au kizuizi cha maji kwenye bomba.
# of a3a77891, reviewed: false
checks-leak_test_without_flame-title = Hakuna mtu anayetafuta uvujaji kwa kutumia moto
# of b8a13054, reviewed: false
checks-leak_test_without_flame-why = Watu wamekufa kwa milipuko walipokuwa wakitafuta gesi kwa kiberiti.
# of feeaafa1, reviewed: false
checks-leak_test_without_flame-do = Tumia maji ya sabuni na si kitu kingine chochote.
# of b3c2614f, reviewed: false
checks-leak_test_done-title = Maungio yamejaribiwa kwa maji ya sabuni
# of 5f79eb0c, reviewed: false
checks-leak_test_done-why = Uvujaji mdogo hauwezi kuonekana, na baada ya muda hauwezi hata kunuswa.
# of 220e116e, reviewed: false
checks-leak_test_done-do = Paka maji ya sabuni kwa brashi kwenye kila ungio, vali na ncha ya mpira wa gesi wakati kuna presha, na uangalie kama kuna mapovu.
# of 56735b7c, reviewed: false
checks-first_gas_vented-title = Gesi ya kwanza iliachiliwa nje ya nyumba, bila kuchomwa, kabla ya mwali wa kwanza
# of fc13b27e, reviewed: false
checks-first_gas_vented-why = Nafasi ya gesi bado ina hewa, na mchanganyiko huo unaweza kulipuka.
# of a9cddec6, reviewed: false
checks-first_gas_vented-do = Achilia gesi nje ya nyumba mara moja au mbili pale geji inapofika kwa mara ya kwanza karibu 4 kPa (40 cm za maji), mbali na moto wowote, kisha jaribu jiko.
# of 9a838ebf, reviewed: false
checks-flame_before_valve-title = Kiberiti kinawashwa kabla ya vali ya gesi kufunguliwa
# of fdeb05dc, reviewed: false
checks-flame_before_valve-why = Gesi inayotangulia kutoka huwaka ghafla kwa mlipuko.
# of 533b3166, reviewed: false
checks-flame_before_valve-do = Washa kiberiti, kishike kwenye kichomeo, kisha ufungue vali.
# of 883d7856, reviewed: false
checks-no_suction_with_flame-title = Mtambo wa biogesi una presha wakati wote gesi inapochomwa
# of 5c15abe8, reviewed: false
checks-no_suction_with_flame-why = Presha ikifika sifuri hewa hufyonzwa ndani na gesi hugeuka kuwa ya kulipuka.
# of d181bac4, reviewed: false
checks-no_suction_with_flame-do = Funga vali kuu, zima miali yote ya moto, na rudisha tope au maji hadi kwenye kina cha kawaida.
# of 95663bf4, reviewed: false
checks-no_emptying_while_burning-title = Hakuna tope linalotolewa wakati mwali unawaka
# of 62808dae, reviewed: false
checks-no_emptying_while_burning-why = Kutoa tope hufyonza mwali au hewa hadi ndani ya nafasi ya gesi.
# of 05a80c4c, reviewed: false
checks-no_emptying_while_burning-do = Zima miali yote ya moto na funga vali kabla ya kutoa tope, na acha tundu la kutolea gesi likiwa wazi wakati huo wote.
# of 1c8bde4c, reviewed: false
checks-main_valve_shut_at_night-title = Vali kuu imefungwa usiku na wakati hakuna mtu nyumbani
# of 248872b2, reviewed: false
checks-main_valve_shut_at_night-why = Koki iliyoachwa wazi hujaza chumba gesi.
# of e0e9bba9, reviewed: false
checks-main_valve_shut_at_night-do = Fanya kufunga vali iliyo kwenye mtambo kuwa kazi ya mwisho ya siku.
# of c19a2834, reviewed: false
checks-kitchen_openings-title = Chumba chenye kifaa cha gesi kina matundu mawili ya kudumu, moja juu na moja chini
# of 12baab95, reviewed: false
checks-kitchen_openings-why = Gesi inayovuja na kaboni monoksaidi ya mwali lazima ziweze kutoka.
# of 32cfbbf1, reviewed: false
checks-kitchen_openings-do = Toboa tundu la hewa chini ya paa na jingine karibu na sakafu; usitumie jiko kwenye chumba kilichofungwa.
# of 9df2ecba, reviewed: false
checks-clearance_above_flame-title = Hakuna kitu kinachoweza kuungua ndani ya 1 m juu ya jiko au taa
# of 50b979b2, reviewed: false
checks-clearance_above_flame-why = Gesi za moto hupanda juu na kuwasha paa la nyasi.
# of af6f20b5, reviewed: false
checks-clearance_above_flame-do = Hamisha taa au jiko, au ning'iniza kinga ya chuma juu yake.
# of 9999b59c, reviewed: false
checks-gas_not_vented_indoors-title = Gesi wala maji ya mtego haviachiliwi ndani ya chumba wala kitalu nyumba
# of f515cb11, reviewed: false
checks-gas_not_vented_indoors-why = Gesi hutia sumu, huondoa hewa ya kupumua na inaweza kulipuka.
# of c56ee35e, reviewed: false
checks-gas_not_vented_indoors-do = Elekeza kila tundu la kutolea gesi na kila mfereji wa maji nje ya nyumba.
# of 25228afa, reviewed: false
checks-gas_used_within_week-title = Gesi inatumiwa angalau mara moja kwa wiki
# of 82c8747c, reviewed: false
checks-gas_used_within_week-why = Presha hupanda hadi mtambo uachilie gesi wenyewe au upasuke.
# of d5724325, reviewed: false
checks-gas_used_within_week-do = Choma gesi kwenye jiko au mwenge wa kuchomea gesi, au acha kulisha mtambo.
# of 06f3bb5f, reviewed: false
checks-no_ignition_at_open_plant-title = Hakuna mtu anayevuta sigara, kutumia simu, kubonyeza swichi au kutoa cheche karibu na mtambo ulio wazi
# of eb7b54ba, reviewed: false
checks-no_ignition_at_open_plant-why = Cheche moja inatosha kuwasha gesi iliyo juu ya mtambo wa biogesi ulio wazi.
# of 98418bff, reviewed: false
checks-no_ignition_at_open_plant-do = Weka vitu hivyo umbali wa 5 m wakati sehemu yoyote iko wazi.
# of 31ce196c, reviewed: false
checks-no_gas_smell_indoors-title = Hakuna harufu ya gesi ndani ya nyumba
# of 8c4ac13a, reviewed: false
checks-no_gas_smell_indoors-why = Gesi iliyo chumbani inaweza kulipuka au kutia sumu, na pua huacha kuitambua baada ya muda mfupi.
# of 0078742e, reviewed: false
checks-no_gas_smell_indoors-do = Zima miali ya moto, usiguse swichi yoyote, fungua milango na madirisha, toa watu wote nje na funga vali iliyo kwenye mtambo; tafuta uvujaji kwa maji ya sabuni.
# of 0401ac27, reviewed: false
checks-methane_in_room_air_danger-title = Methani iliyopimwa chumbani iko chini ya 0.5 %
# of d0a51cc8, reviewed: false
checks-methane_in_room_air_danger-why = Hiyo ni moja ya kumi ya kiasi kinacholipuka, kiwango ambacho hewa huhesabiwa kuwa ya hatari.
# of 7d8804bf, reviewed: false
checks-methane_in_room_air_danger-do = Toa watu wote nje, funga vali iliyo kwenye mtambo, fungua milango, usiguse swichi yoyote.
# of 34acccd6, reviewed: false
checks-methane_in_room_air_much-title = Methani iliyopimwa chumbani iko chini ya 0.25 %
# of 8ca1dc29, reviewed: false
checks-methane_in_room_air_much-why = Hiyo ni nusu ya kiasi kinachohesabiwa kuwa cha hatari, na mahali pengine chumbani au chini ya paa lake inaweza kuwepo zaidi.
# of fe5b10d5, reviewed: false
checks-methane_in_room_air_much-do = Zima miali ya moto, usiguse swichi yoyote, fungua milango na madirisha, funga vali iliyo kwenye mtambo, na usitumie gesi hadi maji ya sabuni yaonyeshe uvujaji na uzibwe.
# of 9e066fa0, reviewed: false
checks-methane_in_room_air_leak-title = Methani iliyopimwa chumbani iko chini ya 0.1 %
# of bb602ba0, reviewed: false
checks-methane_in_room_air_leak-why = Hewa yenyewe haina karibu methani yoyote, kwa hiyo kile ambacho kipimo kinaonyesha chumbani kimevuja.
# of a987342a, reviewed: false
checks-methane_in_room_air_leak-do = Funga vali iliyo kwenye mtambo, pitisha hewa chumbani, na tafuta uvujaji leo kwa maji ya sabuni kwenye kila kiungo, mpira na koki.
# of 7aa948f9, reviewed: false
checks-hydrogen_sulfide_air_danger-title = Hewa inayopumuliwa haina zaidi ya 10 ppm za hidrojeni salfaidi
# of 065cd7ed, reviewed: false
checks-hydrogen_sulfide_air_danger-why = Ikizidi hapo watu huugua ndani ya dakika chache, na ikifika mia chache huanguka bila dalili ya onyo.
# of 37e6c061, reviewed: false
checks-hydrogen_sulfide_air_danger-do = Ondoka mara moja kuelekea upepo unakotoka, na usirudi bila vifaa vyenye hewa ya kupumua.
# of 1502d8c7, reviewed: false
checks-hydrogen_sulfide_air_short-title = Hewa inayopumuliwa haina zaidi ya 5 ppm za hidrojeni salfaidi
# of 7e2d22f7, reviewed: false
checks-hydrogen_sulfide_air_short-why = Hiyo ni zaidi ya kiasi ambacho wafanyakazi wanaruhusiwa kupumua hata kwa robo saa, na inaweza kupanda ndani ya muda mfupi sana.
# of 810a5a96, reviewed: false
checks-hydrogen_sulfide_air_short-do = Nenda kwenye hewa safi ukielekea upepo unakotoka, zuia wengine wasikaribie, funga vali iliyo kwenye mtambo, na usimwache mtu yeyote akae hapo hadi uvujaji upatikane na kipimo cha hewa kipungue.
# of 0899429a, reviewed: false
checks-hydrogen_sulfide_air_day-title = Hewa inayopumuliwa haina zaidi ya 1 ppm za hidrojeni salfaidi
# of f0743eed, reviewed: false
checks-hydrogen_sulfide_air_day-why = Hiyo ni zaidi ya kiasi ambacho wafanyakazi wanaruhusiwa kupumua siku baada ya siku, na inaonyesha kwamba gesi inatoka karibu.
# of 0d8ec0d0, reviewed: false
checks-hydrogen_sulfide_air_day-do = Pitisha hewa mahali hapo, tafuta uvujaji kwa maji ya sabuni, acha mifuniko na mashimo yakiwa yamefungwa, na pima tena; usitegemee harufu.
# of 16f13d04, reviewed: false
checks-carbon_monoxide_danger-title = Kaboni monoksaidi iliyopimwa chumbani haizidi 90 ppm
# of 6c2e12c4, reviewed: false
checks-carbon_monoxide_danger-why = Ikizidi hapo robo saa inatosha kudhuru; haina harufu.
# of 4a902f42, reviewed: false
checks-carbon_monoxide_danger-do = Zima kifaa, toa watu wote kwenye hewa safi na ita msaada kama mtu yeyote anahisi kizunguzungu.
# of f4efcd9a, reviewed: false
checks-carbon_monoxide_half_hour-title = Kaboni monoksaidi iliyopimwa chumbani haizidi 50 ppm
# of 44426901, reviewed: false
checks-carbon_monoxide_half_hour-why = Ikizidi hapo nusu saa inatosha kudhuru, watoto na wajawazito mapema zaidi; haina harufu.
# of 84ea3bf0, reviewed: false
checks-carbon_monoxide_half_hour-do = Zima kifaa, toa watu wote kwenye hewa safi, fungua milango na madirisha, na usiwashe chochote humo hadi kichomeo na matundu ya hewa virekebishwe.
# of 5982964d, reviewed: false
checks-carbon_monoxide_hour-title = Kaboni monoksaidi iliyopimwa chumbani haizidi 25 ppm
# of 4218d1a2, reviewed: false
checks-carbon_monoxide_hour-why = Ikizidi hapo saa moja inatosha kudhuru, na mlo unaweza kuchukua muda mrefu zaidi kuiva.
# of 0f98eae0, reviewed: false
checks-carbon_monoxide_hour-do = Zima kifaa, pitisha hewa chumbani, safisha kichomeo na rekebisha hewa yake, na toboa matundu ya hewa yanayokosekana kabla ya kukiwasha tena.
# of adcb0447, reviewed: false
checks-carbon_monoxide_eight_hours-title = Kaboni monoksaidi iliyopimwa chumbani haizidi 10 ppm
# of 22b02eea, reviewed: false
checks-carbon_monoxide_eight_hours-why = Ikizidi hapo siku ya kazi au usiku mmoja katika hewa hiyo hudhuru, na nyingine huongezeka muda wote mwali unapokosa hewa.
# of 4ef28d2d, reviewed: false
checks-carbon_monoxide_eight_hours-do = Pitisha hewa chumbani, usimwache mtu yeyote alale humo mwali unapowaka, safisha kichomeo, rekebisha hewa yake, na pima tena.
# of 74cbbce6, reviewed: false
checks-no_unflued_heater-title = Hakuna hita ya maji isiyo na bomba la moshi inayowaka ndani ya nyumba
# of cb52c4c7, reviewed: false
checks-no_unflued_heater-why = Kaboni monoksaidi yake huua watu bafuni.
# of 3d893ae5, reviewed: false
checks-no_unflued_heater-do = Acha kuitumia; iweke nje ya nyumba au iwekee bomba la moshi kama kanuni za mahali hapo zinavyotaka.
# of 6c4301de, reviewed: false
checks-flame_is_blue-title = Mwali unawaka kwa utulivu na ni wa bluu
# of 23d5352f, reviewed: false
checks-flame_is_blue-why = Mwali wa njano au wenye masizi unakosa hewa na hutoa kaboni monoksaidi; mwali unaoinuka huzimika na kuacha gesi itoke.
# of 120d6de8, reviewed: false
checks-flame_is_blue-do = Safisha matundu ya kichomeo na rekebisha mlango wa hewa wa kichomeo.
# of 6d3bf5f1, reviewed: false
checks-appliance_converted-title = Hakuna kifaa cha gesi ya mtungi au gesi ya bomba ya mjini kinachotumiwa bila kubadilishwa
# of cdcc699d, reviewed: false
checks-appliance_converted-why = Nozeli na matundu yake hayafai kwa biogesi, hivyo mwali huinuka kutoka kwenye kichomeo au hurudi nyuma ndani.
# of 18942e78, reviewed: false
checks-appliance_converted-do = Mwombe mtu anayejua vichomeo vya biogesi apanue nozeli na matundu na avijaribu.
# of b215dbef, reviewed: false
checks-gas_supply_covers_demand-title = Gesi ya siku inafikia kiasi kinachotakiwa kwa siku
# of 1dd6b536, reviewed: false
checks-gas_supply_covers_demand-why = Kinachopungua hufidiwa kwa kuchoma kuni au kununua, na watu hupoteza imani na mtambo.
# of a9622d58, reviewed: false
checks-gas_supply_covers_demand-do = Lisha zaidi kama mtambo wa biogesi unaweza kubeba, choma gesi pale ilipo na thamani kubwa zaidi, au punguza idadi ya vichomeo vinavyotumiwa.
# of 340e5e98, reviewed: false
checks-gas_there_when_wanted-title = Angalau 90 % ya gesi inayotakiwa ipo wakati inapotakiwa
# of 532aafbc, reviewed: false
checks-gas_there_when_wanted-why = Mwali huzimika katikati ya kupika, na baadaye gesi inaweza kutoka bila kuchomwa.
# of 7f47dd61, reviewed: false
checks-gas_there_when_wanted-do = Funga koki mwali unapozimika; hamishia matumizi fulani kwenye saa yenye gesi, au hifadhi gesi zaidi.
# of fe1102ce, reviewed: false
checks-gas_not_wasted-title = Gesi inayoachiliwa bila kuchomwa haizidi moja ya kumi
# of 76776298, reviewed: false
checks-gas_not_wasted-why = Gesi iliyoachiliwa inaweza kushika moto, na methani yake huongeza joto la dunia zaidi sana kuliko mwali ungefanya.
# of 5d617587, reviewed: false
checks-gas_not_wasted-do = Tumia gesi, hifadhi zaidi, au punguza malisho; choma inayobaki kwenye mwenge wa kuchomea gesi nje ya nyumba.
# of d513f7b8, reviewed: false
checks-pipe_drop_usual-title = Bomba halipotezi zaidi ya 0.5 kPa katika saa yenye matumizi makubwa zaidi
# of 5952d470, reviewed: false
checks-pipe_drop_usual-why = Presha inayofika kwenye kichomeo ni ndogo mno, na mwali wake hudhoofika au huzimika.
# of 0dd463cc, reviewed: false
checks-pipe_drop_usual-do = Tumia bomba pana zaidi, njia fupi zaidi au punguza kona.
# of b02186d7, reviewed: false
checks-appliance_pressure_enough-title = Gesi inafika kwenye kifaa ikiwa na presha ambayo kifaa kinahitaji
# of 5c4f3d0a, reviewed: false
checks-appliance_pressure_enough-why = Mwali usio na presha hurudi nyuma ndani au huzimika na kuacha gesi itoke bila kuchomwa.
# of 66bc18d6, reviewed: false
checks-appliance_pressure_enough-do = Tumia bomba pana zaidi, punguza idadi ya vifaa vinavyowashwa kwa wakati mmoja, au ongeza uzito juu ya pipa la gesi au mfuko kama mtengenezaji wake anavyoruhusu, chini ya kikomo chake.
# of e2a2b798, reviewed: false
checks-losses_do_not_undo_savings-why = Methani huongeza joto mara 27 ya kaboni dayoksaidi, hivyo uvujaji wa asilimia chache unaweza kufuta faida ya nishati iliyookolewa.
# of acd7ea79, reviewed: false
checks-losses_do_not_undo_savings-do = Tafuta uvujaji kwa maji ya sabuni, tumia gesi yote, na choma inayobaki.
# of dd9762a3, reviewed: false
checks-flame_arrester_fitted-title = Kizuia mwali au kizuizi cha maji kipo kabla ya vifaa vya gesi
# of 8a41dc26, reviewed: false
checks-flame_arrester_fitted-why = Mwali unaorudi nyuma haupaswi kukimbia ndani ya bomba hadi kwenye hifadhi ya gesi.
# of b2a1ee81, reviewed: false
checks-flame_arrester_fitted-do = Weka kimoja kwenye bomba, na kisafishe mwali unapodhoofika.
# of 51935636, reviewed: false
checks-hydrogen_sulfide_gas_usual-title = Biogesi haina zaidi ya 1,000 ppm za hidrojeni salfaidi
# of 1d7efcf5, reviewed: false
checks-hydrogen_sulfide_gas_usual-why = Ikizidi hapo hula majiko kwa kutu, na hata uvujaji mdogo ndani ya nyumba ni sumu.
# of b4eee09e, reviewed: false
checks-hydrogen_sulfide_gas_usual-do = Weka kichujio cha chuma au weka kipya, na hakikisha jikoni kunapitisha hewa vizuri.
# of fd3265d2, reviewed: false
checks-hydrogen_sulfide_gas_much-title = Biogesi haina zaidi ya 3,000 ppm za hidrojeni salfaidi
# of a58d50a2, reviewed: false
checks-hydrogen_sulfide_gas_much-why = Gesi kama hiyo huhatarisha maisha mara moja hata pale ilipochanganyika na hewa mara thelathini ya kiasi chake, na hula majiko na vali kwa kutu upesi.
# of af82ac03, reviewed: false
checks-hydrogen_sulfide_gas_much-do = Weka kichujio cha chuma kwenye bomba kabla ya kuchoma gesi zaidi ndani ya nyumba, pima kila kiungo kwa maji ya sabuni, kaa mbali na mahali gesi inapoachiliwa, na badilisha kichujio nje ya nyumba.
# of 2b8754e7, reviewed: false
checks-household_pressure_scope-title = Presha ya gesi iko chini ya 5 kPa, kama kiwango cha mitambo ya kaya kinavyochukulia
# of e2a7aaf2, reviewed: false
checks-household_pressure_scope-why = Kiwango cha kimataifa cha mitambo ya kaya kinahusu tu chini ya 5 kPa na chini ya 100 MWh kwa mwaka.
# of d8a656f7, reviewed: false
checks-household_pressure_scope-do = Shughulikia mtambo kwa kanuni za mitambo mikubwa zaidi na uliza fundi wa gesi mwenye leseni.
# of 83569f1d, reviewed: false
checks-dome_pressure_tested-title = Kuba isiyosogea inabaki ndani ya 8 kPa ambazo kuba hujaribiwa nazo
# of 62bd91ac, reviewed: false
checks-dome_pressure_tested-why = Presha ikizidi ile ya jaribio, mfuniko na kuba vinaweza kuinuka au kupasuka.
# of efcef2d3, reviewed: false
checks-dome_pressure_tested-do = Tumia gesi au iachilie nje ya nyumba mbali na moto, na zibua mlango wa kutolea ulioziba; kwenye mchoro, panua tanki la kusawazisha au shusha mahali pake pa kufurikia.
# of cad7e6f0, reviewed: false
checks-dome_pressure_most-title = Kuba isiyosogea haizidi kamwe 10 kPa
# of ce588f71, reviewed: false
checks-dome_pressure_most-why = Kuba au mfuniko wake unaweza kurushwa.
# of 805edfad, reviewed: false
checks-dome_pressure_most-do = Weka watu mbali, achilia gesi nje ya nyumba sasa hivi, acha kulisha mtambo na mwite fundi mwashi.
# of b5b844bf, reviewed: false
checks-bag_pressure_most-title = Mfuko hauzidi kamwe 1.5 kPa
# of 26438c09, reviewed: false
checks-bag_pressure_most-why = Mfuko unaweza kupasuka na kuachilia gesi yake yote.
# of 4a4773fe, reviewed: false
checks-bag_pressure_most-do = Achilia gesi nje ya nyumba mbali na moto na punguza kina cha kizuizi cha maji.
# of 2899627e, reviewed: false
checks-relief_on_bag-title = Mfuko una kipunguza presha
# of 889b4a6e, reviewed: false
checks-relief_on_bag-why = Kisipokuwepo, gesi isiyotumiwa hupasua mfuko.
# of a33e94fc, reviewed: false
checks-relief_on_bag-do = Weka kipunguza presha cha kizuizi cha maji nje ya nyumba kabla mfuko haujajazwa.
# of 71e0b7aa, reviewed: false
checks-relief_on_separate_holder-title = Chombo cha gesi kilicho kando kina kipunguza presha
# of 6d7298a8, reviewed: false
checks-relief_on_separate_holder-why = Kisipokuwepo, gesi isiyotumiwa hupasua chombo hicho.
# of 099009f0, reviewed: false
checks-relief_on_separate_holder-do = Weka kipunguza presha cha kizuizi cha maji nje ya nyumba kabla gesi haijaingizwa.
# of eb56a12f, reviewed: false
checks-relief_setting_bag-title = Kipunguza presha cha mfuko kinafunguka kwenye presha ya 0.8 hadi 1.2 kPa
# of 58d4651c, reviewed: false
checks-relief_setting_bag-why = Kipunguza presha kinachochelewa kufunguka hakilindi mfuko.
# of b424cea0, reviewed: false
checks-relief_setting_bag-do = Weka kizuizi cha maji kwenye 8 hadi 12 cm za maji.
# of 266eacbd, reviewed: false
checks-relief_outlet_distance-title = Mdomo wa kipunguza presha uko angalau 5 m kutoka majengo na njia
# of 052d1592, reviewed: false
checks-relief_outlet_distance-why = Gesi inayoachiliwa hapo inaweza kuingia vyumbani au kukutana na mwali wa moto.
# of 0bf77be7, reviewed: false
checks-relief_outlet_distance-do = Hamisha mdomo huo, na weka kila mwali wa moto 3 m au zaidi kutoka hapo.
# of f55e412a, reviewed: false
checks-outlet_clear-title = Mlango wa kutolea wa kuba isiyosogea haujaziba
# of d5bf623e, reviewed: false
checks-outlet_clear-why = Tope lazima liweze kutoka gesi inapoongezeka, kwa sababu hakuna kitu kingine kinachopunguza presha.
# of 3e6d6a90, reviewed: false
checks-outlet_clear-do = Zibua mlango wa kutolea ukiwa nje, kwa mti mrefu.
# of db1acae4, reviewed: false
checks-condensate_trap-title = Bomba la gesi lina mtego wa maji ya mvuke au linarudisha maji kwenye mtambo
# of 0a752dc3, reviewed: false
checks-condensate_trap-why = Biogesi ina unyevu, na maji ndani ya bomba huizuia au hufanya mwali urukeruke.
# of 5cae5a73, reviewed: false
checks-condensate_trap-do = Weka mtego mahali pa chini kabisa, ndani ya shimo lenye mfuniko, au laza bomba literemke kurudi kwenye mtambo.
# of cd2fd425, reviewed: false
checks-trap_water_level-title = Maji ya kizuizi cha kipunguza presha na ya mtego yako kwenye alama yake
# of f9890df2, reviewed: false
checks-trap_water_level-why = Mtego mkavu huruhusu gesi itoke, na uliojaa kupita kiasi huizuia.
# of a98c7933, reviewed: false
checks-trap_water_level-do = Angalia kila siku na jaza hadi kwenye alama, si kuipita.
# of 3608e60d, reviewed: false
checks-pipe_tightness-title = Mabomba yanashikilia presha yake kwa dakika 5 koki zote zikiwa zimefungwa
# of 3525dc68, reviewed: false
checks-pipe_tightness-why = Bomba linalovuja hujaza jikoni gesi.
# of 56e072ee, reviewed: false
checks-pipe_tightness-do = Acha geji itulie kwa dakika 2 na uiangalie kwa dakika 5; ikishuka, funga vali kuu na funga maungio upya.
# of 9cf160fe, reviewed: false
checks-no_leak_indoors-title = Maji ya sabuni hayaonyeshi mapovu ndani ya nyumba
# of d5a439ca, reviewed: false
checks-no_leak_indoors-why = Gesi iliyo chumbani hutia sumu na hulipuka.
# of 4aaf1b45, reviewed: false
checks-no_leak_indoors-do = Funga vali kuu, pitisha hewa chumbani na funga ungio upya kabla ya matumizi yoyote.
# of 9b62307b, reviewed: false
checks-no_entry-title = Hakuna mtu anayeingia ndani ya mtambo wa biogesi, shimo la mlango wa kutolea au shimo la tope
# of e03221e2, reviewed: false
checks-no_entry-why = Gesi iliyo shimoni huua ndani ya pumzi chache, na wanaofuata kusaidia hufa pia.
# of 9932eb3d, reviewed: false
checks-no_entry-do = Usiingie ndani. Fanya kazi ukiwa nje kwa zana ndefu, na ita timu iliyofunzwa na yenye vifaa.
# of 2e270ae8, reviewed: false
checks-entry_team_trained-title = Ni timu iliyofunzwa na yenye vifaa tu inayoingia
# of e239a5fe, reviewed: false
checks-entry_team_trained-why = Bila mafunzo na hewa ya kupumua, hata kuingia kwa muda mfupi huua.
# of 551ca614, reviewed: false
checks-entry_team_trained-do = Simamisha mpango huo na ajiri timu yenye leseni ya kufanya kazi katika maeneo yaliyofungwa.
# of dd3d4fb8, reviewed: false
checks-entry_ventilated-title = Kabla timu haijaingia, shimo lililoondolewa tope limekaa wazi na kupitishwa hewa kwa angalau siku 2
# of b5632fc8, reviewed: false
checks-entry_ventilated-why = Gesi hubaki shimoni na hupanda tena mashapo yanapokorogwa.
# of 9363e697, reviewed: false
checks-entry_ventilated-do = Subiri na puliza hewa safi ndani; pima tena na tena wakati wote.
# of f1096c18, reviewed: false
checks-entry_oxygen-title = Hewa iliyo shimoni ina oksijeni ya 19.5 hadi 23.5 %
# of f526a8f0, reviewed: false
checks-entry_oxygen-why = Ikiwa chini ya hapo, maana yake gesi nyingine imechukua nafasi yake.
# of 714cea6e, reviewed: false
checks-entry_oxygen-do = Mtu yeyote asiingie; endelea kupitisha hewa na upime tena.
# of 585e53a2, reviewed: false
checks-entry_flammable_gas-title = Hewa iliyo shimoni ina methani chini ya 0.5 %
# of bbf37952, reviewed: false
checks-entry_flammable_gas-why = Moja ya kumi ya kiwango cha kulipuka huhesabiwa kuwa hatari.
# of 714cea6e, reviewed: false
checks-entry_flammable_gas-do = Mtu yeyote asiingie; endelea kupitisha hewa na upime tena.
# of 40489145, reviewed: false
checks-entry_hydrogen_sulfide-title = Hewa iliyo shimoni haina zaidi ya 10 ppm za hidrojeni salfaidi
# of 6e7ba03d, reviewed: false
checks-entry_hydrogen_sulfide-why = Huangusha watu bila dalili ya onyo, na mashapo yanayokorogwa hutoa zaidi.
# of 714cea6e, reviewed: false
checks-entry_hydrogen_sulfide-do = Mtu yeyote asiingie; endelea kupitisha hewa na upime tena.
# of 54f4e1ca, reviewed: false
checks-entry_harness_and_watch-title = Yeyote anayeingia amevaa mkanda wa usalama wa mwili uliofungwa kamba inayoshikwa na watu wawili walio nje
# of fc880bba, reviewed: false
checks-entry_harness_and_watch-why = Hivyo mtu anayezimia anaweza kuvutwa nje bila mtu yeyote kumfuata.
# of d09b3cb8, reviewed: false
checks-entry_harness_and_watch-do = Mtu yeyote asiingie hadi mkanda wa usalama, kamba na watu wawili wa nje wawepo.
# of 09b148ba, reviewed: false
checks-animal_test_not_relied_on-title = Hakuna mtu anayetegemea mnyama mdogo kuonyesha kwamba hewa ni nzuri
# of 664ea828, reviewed: false
checks-animal_test_not_relied_on-why = Mnyama anayeishi kwa dakika kumi hathibitishi hewa; kipima gesi pekee ndicho huthibitisha.
# of 8228a283, reviewed: false
checks-animal_test_not_relied_on-do = Pima oksijeni, gesi inayowaka na hidrojeni salfaidi kwa kipima gesi.
# of 281618a0, reviewed: false
checks-nobody_over_stirred_store-title = Hakuna mtu wala mnyama aliye ndani ya jengo wakati hifadhi ya tope iliyo chini yake inakorogwa au kuondolewa tope
# of c6eea392, reviewed: false
checks-nobody_over_stirred_store-why = Kukoroga huachilia hidrojeni salfaidi nyingi kwa ghafla.
# of 14c07846, reviewed: false
checks-nobody_over_stirred_store-do = Toa wote kwenye jengo, lifungue, simama upande ambao upepo unatokea na usubiri nusu saa baada ya kukoroga.
# of d66011cf, reviewed: false
checks-head_stays_above_rim-title = Hakuna mtu anayeinamisha kichwa chini ya ukingo wa mtambo ulio wazi
# of dc97bba7, reviewed: false
checks-head_stays_above_rim-why = Gesi iko chini kidogo tu ya ukingo, na pumzi moja inaweza kumfanya mtu atumbukie.
# of aa2141d5, reviewed: false
checks-head_stays_above_rim-do = Simama wima na tumia zana ndefu.
# of e293d375, reviewed: false
checks-household_knows_no_rescue-title = Kila mtu shambani anajua kwamba hapaswi kumfuata mtu anayezimia shimoni
# of 42e62506, reviewed: false
checks-household_knows_no_rescue-why = Wengi wa waliokufa mashimoni ni watu walioingia kusaidia.
# of e3b4c339, reviewed: false
checks-household_knows_no_rescue-do = Fundisha hivi: usimfuate, vuta kamba, puliza hewa ndani, ita waokoaji waliofunzwa; bandika nambari ya simu ya dharura.
# of 1e77eba8, reviewed: false
checks-load_light-title = Hakuna mzigo unaozidi 16 kg
# of 36458fc3, reviewed: false
checks-load_light-why = Hadi uzito huu wanawake wengi wanaweza kuinua kwa usalama kwa kimo cha kiuno.
# of 4c15cfed, reviewed: false
checks-load_light-do = Usijaze ndoo sana, au gawaneni mzigo.
# of b1c7fa04, reviewed: false
checks-load_bucket-title = Hakuna mzigo unaobebwa kwa mkono unaozidi 20 kg
# of 9ae95954, reviewed: false
checks-load_bucket-why = Ndoo ya 15 hadi 20 kg inaweza kubebwa asubuhi nzima; zaidi ya hapo haiwezekani.
# of 1c78dbf6, reviewed: false
checks-load_bucket-do = Usijaze ndoo sana, au tumia toroli.
# of 92303b91, reviewed: false
checks-load_most-title = Hakuna mzigo unaozidi 25 kg
# of d4d99f6d, reviewed: false
checks-load_most-why = Mizigo mizito zaidi huumiza mgongo, hata wa wanaume wenye nguvu.
# of a6d82548, reviewed: false
checks-load_most-do = Tumia ndoo ndogo zaidi, toroli, au watu wawili.
# of 2ffd8fb6, reviewed: false
checks-load_extreme-title = Hakuna mzigo unaozidi 40 kg kamwe
# of e95fe539, reviewed: false
checks-load_extreme-why = Mzigo kama huo unaweza kuumiza mara ya kwanza unapoinuliwa.
# of d27be320, reviewed: false
checks-load_extreme-do = Usiuinue; ugawanye au tumia magurudumu.
# of b535312d, reviewed: false
checks-no_twisting-title = Hakuna mtu anayepinda mgongo kwa kuuzungusha akiwa na mzigo
# of d618a30a, reviewed: false
checks-no_twisting-why = Kuzungusha mgongo hupunguza 10 hadi 20 % ya kile kinachoweza kuinuliwa kwa usalama.
# of 3549444b, reviewed: false
checks-no_twisting-do = Geuka kwa miguu.
# of 240c1261, reviewed: false
checks-carry_distance-title = Mizigo iliyojaa haibebwi zaidi ya 10 m bila kupumzika
# of 322d800e, reviewed: false
checks-carry_distance-why = Kubeba kwa umbali mrefu zaidi huchosha na kuumiza.
# of c29a2a5f, reviewed: false
checks-carry_distance-do = Tumia toroli, mkokoteni au mzega, au sogeza lundo karibu zaidi.
# of cacaf8f5, reviewed: false
checks-children_do_not_carry-title = Watoto hawabebi kinyesi wala maji ya mtambo
# of cd66cb9f, reviewed: false
checks-children_do_not_carry-why = Mtoto hapaswi kubeba zaidi ya moja ya kumi ya uzito wake mwenyewe.
# of 63d23d71, reviewed: false
checks-children_do_not_carry-do = Waache watu wazima wafanye kazi hiyo.
# of e5c3ac1c, reviewed: false
checks-daily_mass_usual-title = Hakuna mtu anayehamisha zaidi ya 3 t kwa siku
# of dff73a84, reviewed: false
checks-daily_mass_usual-why = Watu wasiofunzwa huumia kutokana na jumla ya mizigo mingi.
# of 7a628049, reviewed: false
checks-daily_mass_usual-do = Gawanya ujazaji wa kwanza kwa siku nyingi zaidi au watu wengi zaidi.
# of f6482b7b, reviewed: false
checks-daily_mass_most-title = Hakuna mtu anayehamisha zaidi ya 10 t kwa siku kwa umbali mfupi
# of 043d389a, reviewed: false
checks-daily_mass_most-why = Hiki ndicho kiwango cha juu kabisa kwa watu waliofunzwa na mizigo inayobebeka vizuri.
# of 00a4028c, reviewed: false
checks-daily_mass_most-do = Panga kazi upya kwa siku zaidi, watu zaidi au mkokoteni.
# of 2d46e7ac, reviewed: false
checks-heat_most-title = Kipimo cha joto cha balbu nyevu na tufe (WBGT) hakizidi 32 °C wakati wa kazi nzito
# of ba94de83, reviewed: false
checks-heat_most-why = Kiharusi cha joto huua.
# of b5c8a9cb, reviewed: false
checks-heat_most-do = Acha kazi nzito hadi hali iwe ya baridi zaidi.
# of 790c38c0, reviewed: false
checks-no_manure_from_restricted_zone-title = Hakuna samadi inayotoka kwenye shamba la mifugo lililo ndani ya eneo lenye zuio la ugonjwa
# of 88cb6df9, reviewed: false
checks-no_manure_from_restricted_zone-why = Homa ya nguruwe, mafua ya ndege na ugonjwa wa miguu na midomo husafiri na samadi, magurudumu na buti.
# of 9b0bef16, reviewed: false
checks-no_manure_from_restricted_zone-do = Tumia samadi yako mwenyewe tu, na uliza mamlaka ya afya ya mifugo.
# of 189aaa1f, reviewed: false
checks-vehicles_cleaned-title = Magari na toroli husafishwa kabla ya kuvuka kutoka shamba moja la mifugo hadi jingine
# of 003c39a2, reviewed: false
checks-vehicles_cleaned-why = Kinyesi kilicho kwenye magurudumu hubeba magonjwa.
# of 086a6d64, reviewed: false
checks-vehicles_cleaned-do = Yaoshe na yatie dawa ya kuua vimelea kwenye sakafu ngumu, na zuia maji hayo yasiingie kwenye mtambo wa biogesi.
# of 32fadebc, reviewed: false
checks-hands_washed-title = Kila mtu ananawa mikono kwa sabuni baada ya kulisha mtambo na kufanya kazi ya tope
# of d3742065, reviewed: false
checks-hands_washed-why = Kinyesi na tope hubeba vimelea vya magonjwa na mayai ya minyoo.
# of 0cbb8693, reviewed: false
checks-hands_washed-do = Weka sabuni na maji kando ya shimo la kuchanganyia, mahali ambapo haviwezi kutiririka na kuingia humo.
# of 37f686b2, reviewed: false
checks-protective_clothing_worn-title = Glavu na buti huvaliwa na vidonda hufunikwa
# of d7106e1d, reviewed: false
checks-protective_clothing_worn-why = Kuzibua mifereji kwa mikono mitupu kulisababisha maambukizi zaidi ya moja kwa kila watu watano kwa mwaka.
# of 873b6d18, reviewed: false
checks-protective_clothing_worn-do = Mpe kila mfanyakazi glavu na buti zinazobaki kwenye mtambo.
# of 0228d764, reviewed: false
checks-vulnerable_people_spared-title = Wanawake wajawazito, watoto wadogo na wagonjwa hawashiki kinyesi wala tope
# of 0b85d979, reviewed: false
checks-vulnerable_people_spared-why = Maambukizi ambayo wengine huyavumilia huwadhuru wao au mtoto aliye tumboni.
# of 01e4b8ed, reviewed: false
checks-vulnerable_people_spared-do = Mwache mtu mwingine alishe mtambo.
# of 85c22efd, reviewed: false
checks-latrine_retention-title = Kwa kinyesi cha binadamu, muda wa kukaa kwa tope ni angalau siku 40
# of d423b500, reviewed: false
checks-latrine_retention-why = Muda mfupi hupitisha vimelea vingi zaidi vya magonjwa, na hakuna muda wa kukaa ambao peke yake hulifanya tope kuwa salama.
# of 30c12cab, reviewed: false
checks-latrine_retention-do = Ongeza muda wa kukaa, na hifadhi tope kabla ya kulitumia.
# of 82957a8b, reviewed: false
checks-excreta_digestate_stored-title = Tope lenye kinyesi cha binadamu linahifadhiwa kwa mwaka mmoja kabla ya kuwekwa kwenye mazao ya chakula
# of 5e0f340a, reviewed: false
checks-excreta_digestate_stored-why = Mayai ya minyoo huendelea kuishi baada ya kumeng'enywa.
# of 2419c801, reviewed: false
checks-excreta_digestate_stored-do = Hifadhi kwa mwaka mmoja mahali penye joto, hadi miaka miwili mahali penye ubaridi, au tengeneza mboji kwa joto la zaidi ya 50 °C kwa zaidi ya wiki moja.
# of 529182b0, reviewed: false
checks-excreta_harvest_wait-title = Angalau mwezi mmoja unapita tangu kuweka tope la mwisho lenye kinyesi cha binadamu hadi kuvuna
# of 5c863d59, reviewed: false
checks-excreta_harvest_wait-why = Jua na muda huua sehemu ya vimelea vya magonjwa vilivyobaki.
# of 09866a49, reviewed: false
checks-excreta_harvest_wait-do = Acha kulitumia mwezi mmoja kabla ya kuvuna.
# of 324aba74, reviewed: false
checks-no_excreta_on_raw_crops-title = Tope lenye kinyesi cha binadamu haliwekwi kamwe kwenye mazao yanayoliwa mabichi
# of 3c426505, reviewed: false
checks-no_excreta_on_raw_crops-why = Vimelea vya magonjwa na mayai ya minyoo hupita kwenye mtambo wa biogesi vikiwa hai.
# of 2e430b61, reviewed: false
checks-no_excreta_on_raw_crops-do = Litumie kwenye miti, majani ya mifugo au mazao yanayopikwa, na chini ya udongo.
# of f4a7dc78, reviewed: false
checks-raw_crops_wait-title = Angalau siku 90 zinapita kati ya kuweka tope na kuvuna mazao yanayoliwa mabichi
# of aced0493, reviewed: false
checks-raw_crops_wait-why = Vimelea vya magonjwa huhitaji muda huo wote ili vife shambani.
# of c66daf41, reviewed: false
checks-raw_crops_wait-do = Acha mazao hayo bila kuvunwa hadi wakati huo au yapike; tumia tope kabla ya kupanda.
# of 28355f62, reviewed: false
checks-raw_crops_in_soil_wait-title = Angalau siku 120 zinapita pale ambapo sehemu inayoliwa mbichi inagusa udongo
# of 8266f040, reviewed: false
checks-raw_crops_in_soil_wait-why = Vimelea vya magonjwa huishi muda mrefu zaidi kwenye udongo.
# of 93b4e3cc, reviewed: false
checks-raw_crops_in_soil_wait-do = Subiri, au tumia tope kwenye mazao mengine.
# of c6a82274, reviewed: false
checks-digestate_not_sprayed-title = Tope linapitishwa kwenye mifereji na halinyunyizwi
# of cad68a96, reviewed: false
checks-digestate_not_sprayed-why = Watu waliomwagilia kwa tope bila kinga walikuwa na hatari ya kuharisha ya karibu mmoja kati ya watano kwa mwaka.
# of d6d6e780, reviewed: false
checks-digestate_not_sprayed-do = Tumia mifereji au kopo la kumwagilia karibu na ardhi, ukiwa na buti na glavu.
# of bfce680a, reviewed: false
checks-lime_not_relied_on-title = Hakuna mtu anayetegemea chokaa peke yake kuua mayai ya minyoo
# of 3da325de, reviewed: false
checks-lime_not_relied_on-why = Chini ya karibu 28 °C mayai hayo yaliishi zaidi ya siku 70 kwenye chokaa kali.
# of 24eadb19, reviewed: false
checks-lime_not_relied_on-do = Tumia joto au hifadhi ya muda mrefu.
# of d92fb1f6, reviewed: false
checks-sludge_treated_as_infective-title = Mashapo ya chini yanahifadhiwa au kufanywa mboji kabla ya kutumiwa
# of a6902115, reviewed: false
checks-sludge_treated_as_infective-why = Mayai ya minyoo na sisti za vimelea hutulia humo.
# of ec739862, reviewed: false
checks-sludge_treated_as_infective-do = Yafanye mboji kwa joto kali au yaweke kwa mwaka mmoja, na yashike ukiwa na glavu.
# of 42c30d8d, reviewed: false
checks-household_volume-title = Mtambo wa biogesi una ukubwa wa mtambo wa kaya au wa shamba dogo
# of e056b1d7, reviewed: false
checks-household_volume-why = Mitambo ya kaya huwa na 4 hadi 20 m3; nambari iliyo mbali sana na hapo mara nyingi ni lita zilizoandikwa badala ya mita za ujazo au kinyume chake, na kilicho kweli kwa mitambo rahisi si kweli kwa mikubwa.
# of f834da12, reviewed: false
checks-household_volume-do = Hakikisha kizio cha kipimo. Kama ukubwa ni sahihi, mtambo usanifiwe na kuidhinishwa kama mtambo mkubwa zaidi au wa majaribio.
# of 05a366b1, reviewed: false
checks-herd_covers_feed-title = Mifugo inatoa kiasi kinacholishwa
# of 9f208d85, reviewed: false
checks-herd_covers_feed-why = Kinacholishwa kimetajwa kuwa zaidi ya kile wanyama hawa wanachotoa, hivyo mojawapo ya takwimu si sahihi au malisho ya mtambo yatapungua.
# of 7b860d93, reviewed: false
checks-herd_covers_feed-do = Pima uzito wa kinyesi cha siku moja; sahihisha idadi ya mifugo, jinsi inavyofugwa au malisho ya mtambo.
# of e6a30cd7, reviewed: false
checks-feed_covers_demand-title = Malisho yaliyopo yanatoa gesi inayotakiwa
# of f6b0a886, reviewed: false
checks-feed_covers_demand-why = Mtambo mkubwa zaidi hauongezi sana gesi inayotokana na malisho yale yale; kinachopungua hufidiwa kwa kuchoma kuni au kununua.
# of 6bfef731, reviewed: false
checks-feed_covers_demand-do = Fuga wanyama wengi zaidi au wafunge zizini kwa muda mrefu zaidi, ongeza malisho mengine ya mtambo, au panga saa chache zaidi za matumizi.
# of e86c9fec, reviewed: false
checks-stockpile_suffices-title = Kinyesi chako mwenyewe kinatosha kwa ujazaji wa kwanza
# of 168bf82e, reviewed: false
checks-stockpile_suffices-why = Mtambo uliojazwa nusu hauzibi gesi, na ujazaji unaofanywa kidogo kidogo huchelewa kuanza.
# of 4ba5a0e7, reviewed: false
checks-stockpile_suffices-do = Anza kukusanya mapema zaidi, subiri, nunua kinyesi, au ongeza tope lililomeng'enywa; jibu linaorodhesha ni lipi kati ya haya shamba hili linaweza kufanya.
# of 57ddecdd, reviewed: false
checks-first_filling_seals-title = Ujazo wa kwanza unafunika matundu ya ndani ya milango ya kuingizia na kutolea
# of 5673a369, reviewed: false
checks-first_filling_seals-why = Gesi hutoka kupitia mlango wa kuingizia au wa kutolea ambao ncha yake ya chini haiko chini ya tope, na hewa huingia ndani.
# of 6d305e98, reviewed: false
checks-first_filling_seals-do = Jaza juu zaidi kabla ya kufunga tundu la kutolea gesi; pima mahali ncha za chini zinapoishia.
# of 357d0c21, reviewed: false
checks-first_filling_fits-title = Ujazo wa kwanza unaacha nafasi ya gesi ikiwa tupu
# of 49637f64, reviewed: false
checks-first_filling_fits-why = Tope lililo juu ya kina cha kawaida huchukua nafasi ya gesi na linaweza kufika kwenye bomba la gesi.
# of 8fc363b0, reviewed: false
checks-first_filling_fits-do = Punguza ujazo; kina cha kawaida ni pale mchoro wa ujenzi unapokiweka.
# of 56bd34d7, reviewed: false
checks-first_water_in_time-title = Maji ya ujazaji wa kwanza yanaweza kukusanywa ndani ya wiki mbili
# of 7ecf644f, reviewed: false
checks-first_water_in_time-why = Ujazaji huchanganywa wote kwa mara moja, hivyo maji yake lazima yahifadhiwe kando ya mtambo wa biogesi.
# of d09a38ec, reviewed: false
checks-first_water_in_time-do = Hifadhi maji ya mvua au ya bwawa mapema, au kodi tanki.
# of 67889895, reviewed: false
checks-dose_fits-title = Ulishaji mmoja hauzidi moja ya tano ya tope lililo kwenye mtambo wa biogesi
# of 32aebcf4, reviewed: false
checks-dose_fits-why = Kipimo kikubwa zaidi husukuma nje kile kilicholishwa hivi karibuni, hupoza mtambo wa biogesi na kinaweza kuuchachisha.
# of 62b50c4e, reviewed: false
checks-dose_fits-do = Lisha vipimo vidogo zaidi mara nyingi zaidi.
# of fba4f714, reviewed: false
checks-full_gas_pressure-title = Kuba inahimili presha ya nafasi yake ya gesi iliyojaa
# of 27772de2, reviewed: false
checks-full_gas_pressure-why = Gesi ambayo hakuna anayeichoma huinua tope hadi mahali linapofurikia; hapo kuba hubeba kimo chote kati ya vina vyake, na ikizidi kikomo chake hupasuka au kuvuja.
# of e9f36323, reviewed: false
checks-full_gas_pressure-do = Panua tanki la kusawazisha au shusha mahali pake pa kufurikia, au jenga kuba mbili ndogo zaidi; mhandisi mwenye leseni aweke presha ya usanifu kwenye mchoro.
# of d5427f44, reviewed: false
checks-rotation_meets_demand-title = Mitambo ya kujazwa mara moja kwa zamu inatosheleza mahitaji ya gesi kila siku
# of 7706d6ae, reviewed: false
checks-rotation_meets_demand-why = Siku nyingine gesi hupungua kuliko mahitaji; katika msimu wa baridi, au kila wakati mtambo mmoja unapokuwa wazi.
# of 278650e3, reviewed: false
checks-rotation_meets_demand-do = Jenga mitambo mikubwa zaidi au mingi zaidi, ongeza hifadhi ya gesi, lisha kinachotoa gesi zaidi, au pika kwa nishati nyingine katika wiki zenye gesi kidogo; machaguo yanaonyesha kila idadi inafikia wapi.
# of c0072694, reviewed: false
checks-charge_likely_starts-title = Ujazaji una uwezekano mkubwa zaidi wa kuanza kufanya kazi kuliko kuchacha au kukaa bila kufanya kazi
# of a9a5bb81, reviewed: false
checks-charge_likely_starts-why = Modeli haioni gesi inayoweza kuwaka kwa sehemu kubwa ya ujazaji unaoweza kutokea; malisho yana asidi nyingi mno, amonia nyingi mno au ni baridi mno kwa vijidudu yanavyoleta.
# of 6d6bc3e3, reviewed: false
checks-charge_likely_starts-do = Acha moja ya tano hadi moja ya tatu ya tope la zamani kwenye mtambo wa biogesi, changanya na kinyesi cha ng'ombe, au zimua zaidi; jaribu ujazaji mmoja kabla ya kujenga mitambo zaidi.
# of ed20733f, reviewed: false
checks-charge_surely_starts-title = Kati ya kila mara kumi za kujaza, mara tisa ujazaji unaanza kufanya kazi
# of f9ae4c4d, reviewed: false
checks-charge_surely_starts-why = Ujazaji usio na tope la kuanzishia unaweza kuchacha na kisha kutoa gesi duni kwa miezi; zamu nzima husimama nao.
# of bdf5343d, reviewed: false
checks-charge_surely_starts-do = Acha moja ya tano ya tope la zamani kwenye mtambo wa biogesi kila unapojaza upya, na leta tope kutoka mtambo unaofanya kazi kwa ujazaji wa kwanza.
# of 18ea247b, reviewed: false
checks-charge_mixes-title = Ujazaji ni mwepesi kiasi cha kuweza kuchanganyika
# of 1c4b6f02, reviewed: false
checks-charge_mixes-why = Gesi imehesabiwa kwa tope linalochanganyika, na modeli imelinganishwa na tope kama hilo tu. Ujazaji mzito zaidi huloana bila usawa, huchelewa kuanza na hutoa kidogo kuliko inavyotajwa.
# of b148874d, reviewed: false
checks-charge_mixes-do = Chukulia gesi iliyotajwa kuwa kiasi kikubwa kabisa cha kutumainia; zimua zaidi, au panga ujazaji kwa matabaka pamoja na tope la zamani kwa wingi na pima ujazaji wa kwanza.
# of e9681dfe, reviewed: false
checks-acids_forecast-title = Asidi zinazotabiriwa zinabaki chini ya uwiano ambao ulishaji husimamishwa
# of a2820d90, reviewed: false
checks-acids_forecast-why = Kwa malisho haya asidi huongezeka haraka kuliko vijidudu vinavyozila; gesi inakuwa duni, na mtambo wa biogesi unaweza kuchacha na kusimama.
# of fa313ef0, reviewed: false
checks-acids_forecast-do = Punguza malisho au lisha baadaye, anza na tope lililomeng'enywa, na pima pH au asidi kabla ya kila ongezeko; acha kulisha pH inaposhuka chini ya 6.8.
# of e70fec78, reviewed: false
checks-feeding_without_gap-title = Hakuna wiki mbili zinazopita bila malisho
# of a1c5aa8d, reviewed: false
checks-feeding_without_gap-why = Gesi hupungua siku hadi siku, na malisho makubwa ya kwanza baada ya hapo hukuta vijidudu vimepungua.
# of 006a0462, reviewed: false
checks-feeding_without_gap-do = Taja malisho ya siku hizo, au anza upya na robo ya malisho baada ya pengo hilo.
# of b1025721, reviewed: false
checks-temperature_least-title = Tope lina joto la 10 °C au zaidi
# of c9864d35, reviewed: false
checks-temperature_least-why = Chini ya hapo gesi karibu inakoma na malisho hugeuka asidi baadaye.
# of 03c5d747, reviewed: false
checks-temperature_least-do = Acha kulisha hadi joto liongezeke; weka kinga ya kuhifadhi joto.
# of 88b2b33e, reviewed: false
checks-temperature_cool-title = Tope lina joto la 15 °C au zaidi
# of de5fb130, reviewed: false
checks-temperature_cool-why = Chini ya hapo gesi ni kidogo.
# of cb1f205c, reviewed: false
checks-temperature_cool-do = Punguza malisho, weka kinga ya kuhifadhi joto, na lisha mapema alasiri kwa tope lililopashwa joto na jua.
# of 3877c0f1, reviewed: false
checks-temperature_usual-title = Tope lina joto la 20 °C au zaidi
# of 12f2b65a, reviewed: false
checks-temperature_usual-why = Gesi huongezeka pamoja na joto hadi karibu 35 °C.
# of 2c77fd94, reviewed: false
checks-temperature_usual-do = Weka kinga ya kuhifadhi joto na lisha mapema alasiri wakati tope lililochanganywa lina joto zaidi.
# of e35e15ca, reviewed: false
checks-temperature_most-title = Joto la tope halizidi 40 °C
# of cc9441bb, reviewed: false
checks-temperature_most-why = Vijidudu vya mitambo ya kaya havihimili zaidi ya hapo.
# of f2f5dca8, reviewed: false
checks-temperature_most-do = Uwekee mfuko kivuli au zima upashaji joto.
# of dfcfc9b6, reviewed: false
checks-temperature_freezing-title = Tope liko juu ya joto la kuganda
# of e0d827a9, reviewed: false
checks-temperature_freezing-why = Tope linaloganda hupasua kuta, mabomba na mifuko, na huziba mlango wa kuingizia na wa kutolea.
# of e5d1024b, reviewed: false
checks-temperature_freezing-do = Hakikisha kizio cha kipimo cha joto. Kama ni sahihi, usilishe chochote, usiachilie presha yoyote kupitia barafu, na uliza aliyejenga mtambo.
# of ad95a0c5, reviewed: false
checks-slurry_freezes-title = Tope linabaki juu sana ya joto la kuganda katika mwezi wa baridi zaidi
# of bb829dbe, reviewed: false
checks-slurry_freezes-why = Karibu na 0 °C hakuna gesi, na tope linaloganda hupasua kuta, mabomba na mifuko.
# of eebc05d9, reviewed: false
checks-slurry_freezes-do = Fukia mtambo wa biogesi chini zaidi au uwekee kinga ya kuhifadhi joto, au ondoa tope lote kabla ya baridi ya kugandisha; mtambo wa kupashwa joto ni kazi ya mhandisi.
# of 356de4c5, reviewed: false
checks-slurry_too_hot-title = Tope linabaki kwenye 45 °C au chini yake katika mwezi wa joto zaidi
# of e5701f64, reviewed: false
checks-slurry_too_hot-why = Vijidudu vya mitambo ya kaya hufa, na gesi na amonia havifuati kinachohesabiwa hapa.
# of 9754846d, reviewed: false
checks-slurry_too_hot-do = Wekea mtambo wa biogesi kivuli au ufukie; hakikisha kizio cha kipimo cha joto.
# of dcebcbdb, reviewed: false
checks-frost-title = Mwezi wa baridi zaidi hauna baridi ya kugandisha
# of ded17254, reviewed: false
checks-frost-why = Mabomba, mitego ya maji, vizuizi vya maji na mlango wa kutolea huganda, hivyo gesi hufungiwa ndani au kipunguza presha hakifunguki.
# of a29378be, reviewed: false
checks-frost-do = Toa maji kwenye mitego na mabomba kabla ya baridi ya kugandisha, yafukie au yawekee kinga ya kuhifadhi joto, hakikisha kipunguza presha hakina barafu, na angalia mlango wa kutolea na geji kila siku.
# of 1f18fce9, reviewed: false
checks-cold_season-title = Katika mwezi wa baridi zaidi kuna angalau robo tatu ya gesi ya kawaida
# of 196fd1ea, reviewed: false
checks-cold_season-why = Tope la baridi hutoa gesi pungufu kwa malisho yale yale, na kinacholishwa cha ziada hugeuka asidi.
# of 01fa2d4f, reviewed: false
checks-cold_season-do = Punguza malisho katika miezi ya baridi, weka nishati nyingine kwa ajili ya miezi hiyo, usiahidi gesi zaidi ya ile inayotolewa katika mwezi wa baridi zaidi, na weka kinga ya kuhifadhi joto.
# of 23db0423, reviewed: false
checks-ph_least-title = Tope lina pH ya angalau 6.5
# of 448b1a66, reviewed: false
checks-ph_least-why = Limechacha na gesi iko karibu kukoma.
# of 88a0d37e, reviewed: false
checks-ph_least-do = Acha kulisha hadi pH irudi; ongeza majivu ya kuni au maji ya chokaa polepole tu na kama hatua ya mwisho kabisa.
# of aeb983ea, reviewed: false
checks-ph_usual-title = Tope lina pH ya angalau 6.8
# of 5f63901c, reviewed: false
checks-ph_usual-why = Inashuka kuelekea kuchacha, na pH ndiyo hubadilika mwisho.
# of 7087fef6, reviewed: false
checks-ph_usual-do = Punguza malisho na tafuta chanzo.
# of 25310028, reviewed: false
checks-ph_most-title = Tope lina pH isiyozidi 8
# of 59d0c41b, reviewed: false
checks-ph_most-why = Zaidi ya hapo maana yake kuna amonia nyingi, hasa kutokana na kinyesi cha kuku au mkojo.
# of 6f37dcc8, reviewed: false
checks-ph_most-do = Zimua na changanya na kinyesi cha ng'ombe.
# of bbb60d10, reviewed: false
checks-carbon_to_nitrogen_least-title = Malisho yana uwiano wa kaboni kwa nitrojeni wa angalau 15
# of 93456a1b, reviewed: false
checks-carbon_to_nitrogen_least-why = Chini ya hapo amonia husimamisha vijidudu.
# of 5b5b68ac, reviewed: false
checks-carbon_to_nitrogen_least-do = Changanya na kinyesi cha ng'ombe au mimea iliyokatwakatwa, na punguza mkojo na kinyesi cha kuku.
# of f1313fe2, reviewed: false
checks-carbon_to_nitrogen_usual-title = Malisho yana uwiano wa kaboni kwa nitrojeni wa 20 hadi 30
# of 0ea11e78, reviewed: false
checks-carbon_to_nitrogen_usual-why = Hapo vijidudu hupata vinachohitaji; 25 ilikuwa bora zaidi kwenye 35 °C.
# of 4bdc4440, reviewed: false
checks-carbon_to_nitrogen_usual-do = Changanya malisho yenye maji na virutubisho vingi na malisho makavu yenye virutubisho vichache.
# of 48fca1aa, reviewed: false
checks-carbon_to_nitrogen_most-title = Malisho yana uwiano wa kaboni kwa nitrojeni usiozidi 35
# of cd06b7e2, reviewed: false
checks-carbon_to_nitrogen_most-why = Nitrojeni ikiwa kidogo mno, umeng'enyaji huenda polepole.
# of a54f9e9d, reviewed: false
checks-carbon_to_nitrogen_most-do = Ongeza mkojo au kinyesi cha kuku, na punguza nyasi kavu.
# of b6f3537f, reviewed: false
checks-total_ammonia_usual-title = Nitrojeni ya amonia kwa jumla haizidi 1.5 g/L
# of ae5893d7, reviewed: false
checks-total_ammonia_usual-why = Kuanzia hapo amonia inaweza kuzuia vijidudu wakati pH iko juu ya karibu 7.5.
# of 132526f0, reviewed: false
checks-total_ammonia_usual-do = Ongeza maji na kinyesi cha ng'ombe.
# of d0c95008, reviewed: false
checks-total_ammonia_most-title = Nitrojeni ya amonia kwa jumla haizidi 3 g/L
# of faeaed12, reviewed: false
checks-total_ammonia_most-why = Mitambo ya biogesi ambayo haijaizoea husimama.
# of 09244514, reviewed: false
checks-total_ammonia_most-do = Zimua kwa maji, si kwa majimaji ya mlango wa kutolea, na punguza kinyesi cha kuku na mkojo kwa nusu.
# of e3b3a836, reviewed: false
checks-free_ammonia_usual-title = Amonia huru haizidi 100 mg/L
# of 0789983b, reviewed: false
checks-free_ammonia_usual-why = Amonia huru ndiyo sehemu inayodhuru, na huongezeka pamoja na joto na pH. pH ambayo hakuna aliyeipima hukokotolewa kutokana na malisho.
# of 6f37dcc8, reviewed: false
checks-free_ammonia_usual-do = Zimua na changanya na kinyesi cha ng'ombe.
# of 56e2ef5a, reviewed: false
checks-free_ammonia_most-title = Amonia huru haizidi 250 mg/L
# of 3d7b1de4, reviewed: false
checks-free_ammonia_most-why = Mtambo wa biogesi ambao haujaizoea husimama; hadi 800 ilihimiliwa tu baada ya kuzoea. pH ambayo hakuna aliyeipima hukokotolewa kutokana na malisho.
# of b7f1fb33, reviewed: false
checks-free_ammonia_most-do = Punguza kinyesi cha kuku na mkojo sasa hivi na zimua.
# of c9f67db1, reviewed: false
checks-no_foam-title = Hakuna povu kwenye mlango wa kutolea wala bomba la gesi
# of f6dc7c10, reviewed: false
checks-no_foam-why = Povu hutokana na kulisha kupita kiasi, mafuta au dawa, na huziba gesi.
# of 29db0a06, reviewed: false
checks-no_foam-do = Acha kulisha kwa siku kadhaa na koroga.
# of bde271c6, reviewed: false
checks-scum_most-title = Utando unaoelea hauzidi unene wa 20 cm
# of fa7648e7, reviewed: false
checks-scum_most-why = Hapo gesi hutoka kupitia mlango wa kuingizia badala ya bomba.
# of 1134ac3b, reviewed: false
checks-scum_most-do = Uvunje ukiwa nje, acha kuweka nyasi kavu; ikishindikana ita timu iliyofunzwa na usiingie ndani kamwe.
# of 6c36b8b6, reviewed: false
checks-stirred_daily-title = Tope linakorogwa angalau mara moja kwa siku
# of f7534a5b, reviewed: false
checks-stirred_daily-why = Kukoroga huvunja utando unaoelea na hufikisha malisho kwa vijidudu; mara mbili ni bora zaidi.
# of 8e972d5b, reviewed: false
checks-stirred_daily-do = Koroga kwa mti mrefu kupitia mlango wa kuingizia, au zungusha pipa la gesi.
# of f92e619d, reviewed: false
checks-acids_measured-title = Asidi tete hazizidi 0.4 ya ualkali
# of 488d5596, reviewed: false
checks-acids_measured-why = Zikizidi hapo tope liko karibu kuchacha; uwiano huu hubadilika wiki moja au mbili kabla ya pH kubadilika.
# of a8049285, reviewed: false
checks-acids_measured-do = Lisha nusu au usilishe chochote hadi ushuke, na tafuta kilichobadilika kwenye malisho.
# of 176bc1a0, reviewed: false
checks-methane_usual-title = Angalau nusu ya biogesi ni methani
# of f68fc4fe, reviewed: false
checks-methane_usual-why = Ikiwa chini ya hapo huwaka vibaya; husababishwa na tope linalochacha, uanzishaji ambao haujakamilika, au hewa.
# of 92772cc1, reviewed: false
checks-methane_usual-do = Pima pH, uliza kililishwa nini, na tafuta kama kuna hewa kwenye gesi kabla ya kujaribu mwali wowote.
# of d9745e94, reviewed: false
checks-fed_lately-title = Mtambo ulilishwa ndani ya siku tatu zilizopita
# of 94944a89, reviewed: false
checks-fed_lately-why = Gesi hupungua ndani ya siku chache baada ya ulishaji wa mwisho; kulisha bila mpangilio huvuruga mtambo wa biogesi.
# of d7114d6f, reviewed: false
checks-fed_lately-do = Lisha kiasi cha kawaida, si kile ambacho hakikulishwa.
# of 5ed94b2e, reviewed: false
checks-gas_not_below_expected-title = Gesi iliyopimwa iko ndani ya kiasi ambacho malisho hutoa
# of 211167fd, reviewed: false
checks-gas_not_below_expected-why = Gesi inayofika kwenye mita ni kidogo kuliko ile ambayo malisho hutoa hata katika mtambo duni kabisa wa aina hii.
# of f78d726b, reviewed: false
checks-gas_not_below_expected-do = Tafuta uvujaji kwa maji ya sabuni, kisha angalia pH, joto, tabaka gumu la juu na mashapo.
# of 12149b53, reviewed: false
checks-gas_record_plausible-title = Gesi iliyopimwa haizidi mara 1.5 ya ile ambayo malisho hutoa
# of 49f00452, reviewed: false
checks-gas_record_plausible-why = Zaidi ya hapo haiwezi kupatikana kwa malisho haya, hivyo malisho au gesi imeandikwa vibaya.
# of f5fd3757, reviewed: false
checks-gas_record_plausible-do = Pima uzito wa malisho kwa wiki moja, na hakikisha kizio cha mita na kama ujazo huo ni wa siku.
# of b427e77e, reviewed: false
checks-well_distance_least-title = Mtambo unaopokea kinyesi cha binadamu uko angalau 10 m kutoka chanzo chochote cha maji ya kunywa
# of 5cbc586c, reviewed: false
checks-well_distance_least-why = Tope linalovuja hupeleka vimelea vya magonjwa vya kinyesi cha binadamu kwenye maji ya kunywa.
# of a2986b9d, reviewed: false
checks-well_distance_least-do = Chagua mahali pengine, au acha kuunganisha choo; usijenge chini ya 10 m kutoka kisima.
# of 53a7a019, reviewed: false
checks-well_distance_usual-title = Mtambo na mashimo yake ya tope viko angalau 15 m kutoka chanzo chochote cha maji ya kunywa
# of cb1c9d76, reviewed: false
checks-well_distance_usual-why = Tope linalopenya na kutoka huleta vimelea vya magonjwa na nitreti kisimani.
# of e867a445, reviewed: false
checks-well_distance_usual-do = Sogeza mtambo mbali zaidi, au uwekee tabaka la kuzuia maji, thibitisha kwa maji kwamba hauvuji, na kisima kiwe upande wa juu wa mteremko kuliko mtambo.
# of 50a4375c, reviewed: false
checks-well_distance_porous_ground-title = Kwenye mchanga, changarawe au miamba iliyovunjika, mtambo uko angalau 30 m kutoka chanzo chochote cha maji ya kunywa
# of fed990b6, reviewed: false
checks-well_distance_porous_ground-why = Maji hupita haraka na bila kuchujwa kwenye ardhi yenye chembe kubwa au iliyovunjika, hivyo uvujaji hufika kisimani mapema zaidi.
# of b1c4306a, reviewed: false
checks-well_distance_porous_ground-do = Acha umbali wa 30 m, au mamlaka ya maji ipime ardhi na kisima kabla ya kuchimba.
# of e7442a38, reviewed: false
checks-groundwater_below_pit_least-title = Kiwango cha juu kabisa cha maji ya chini ya ardhi katika mwaka kinabaki angalau 1.5 m chini ya sakafu ya shimo
# of ad72ccf2, reviewed: false
checks-groundwater_below_pit_least-why = Maji ya chini ya ardhi yaliyo juu huinua tanki tupu, hudhoofisha uashi wake na hupeleka mbali kinachovuja.
# of d420b97e, reviewed: false
checks-groundwater_below_pit_least-do = Jenga kwa kina kifupi na upana zaidi au kwenye ardhi iliyoinuliwa, na kamwe usiondoe tope na kuuacha mtambo mtupu msimu wa mvua.
# of 83523ba5, reviewed: false
checks-groundwater_depth_masonry-title = Kwa mtambo wa uashi, kiwango cha juu kabisa cha maji ya chini ya ardhi kiko angalau 4.5 m chini ya uso wa ardhi
# of c9e64d01, reviewed: false
checks-groundwater_depth_masonry-why = Shimo la mtambo wa uashi wa kaya lina kina cha karibu 3 m na linapaswa kubaki 1.5 m juu ya maji.
# of 831ab7f2, reviewed: false
checks-groundwater_depth_masonry-do = Pima kutoka sakafu ya shimo iliyopangwa hadi kiwango cha juu kabisa cha maji ya chini ya ardhi; kama ni chini ya 1.5 m, jenga kwa kina kifupi zaidi au mahali pengine.
# of 3967dcc5, reviewed: false
checks-groundwater_out_of_pit-title = Maji ya chini ya ardhi hayapandi hadi ndani ya shimo la mtambo wa uashi
# of a9f6e0e4, reviewed: false
checks-groundwater_out_of_pit-why = Maji yanayosimama dhidi ya tanki huliinua linapokuwa tupu na husukuma kuta zake.
# of 4061b814, reviewed: false
checks-groundwater_out_of_pit-do = Usichimbe hapo bila ukaguzi wa kuelea na utoaji wa maji uliofanywa na mhandisi; chagua ardhi ya juu zaidi au aina ya kina kifupi.
# of 6a6c822e, reviewed: false
checks-plant_outdoors-title = Mtambo wa biogesi na chombo cha gesi viko mahali pa wazi, si ndani ya jengo wala chini yake
# of 2fadb25a, reviewed: false
checks-plant_outdoors-why = Gesi inayovuja hukusanyika vyumbani, pamoja na mabanda ya mifugo, na inaweza kutia sumu au kulipuka.
# of a74d76ca, reviewed: false
checks-plant_outdoors-do = Jenga mtambo nje; ulio ndani ya jengo usitumike hadi uhamishwe.
# of b4d7bf38, reviewed: false
checks-dwelling_distance_usual-title = Mtambo wa biogesi na chombo cha gesi viko angalau 3 m kutoka nyumba yoyote ya kuishi
# of 7bed3830, reviewed: false
checks-dwelling_distance_usual-why = Gesi inayovuja lazima iweze kusambaa kwenye hewa ya wazi kabla ya kufika chumbani.
# of 6e127b98, reviewed: false
checks-dwelling_distance_usual-do = Sogeza mtambo mbali zaidi na nyumba.
# of af5b75f1, reviewed: false
checks-dwelling_distance_bag-title = Mfuko wa gesi wa plastiki uko angalau 5 m kutoka nyumba yoyote ya kuishi
# of a36d58e0, reviewed: false
checks-dwelling_distance_bag-why = Mfuko unaweza kuchanika na kuachilia gesi yake yote kwa mara moja.
# of f780a78b, reviewed: false
checks-dwelling_distance_bag-do = Upe mfuko nafasi zaidi, mahali ambapo watoto na moto haviwezi kuufikia.
# of 1260a08f, reviewed: false
checks-kitchen_distance_pipe-title = Chumba cha kupikia kiko ndani ya 30 m kutoka mtambo, au ukubwa wa bomba umehesabiwa
# of d4677648, reviewed: false
checks-kitchen_distance_pipe-why = Zaidi ya 30 m, bomba la kawaida la nusu inchi au robo tatu inchi linaweza kulinyima jiko gesi.
# of 441f5984, reviewed: false
checks-kitchen_distance_pipe-do = Hesabu bomba kulingana na urefu wake na gesi inayotumiwa, na tumia bomba lenye upana mkubwa zaidi.
# of 25319852, reviewed: false
checks-stable_distance_usual-title = Banda la mifugo liko ndani ya 20 m kutoka mlango wa kuingizia
# of 09cc5882, reviewed: false
checks-stable_distance_usual-why = Kinyesi hubebwa kila siku kwa miaka mingi; mtambo unapaswa kuwa karibu na banda la mifugo kuliko chumba cha kupikia.
# of 762a155a, reviewed: false
checks-stable_distance_usual-do = Sogeza mtambo kuelekea banda la mifugo, ikiwezekana kwa mfereji unaoingia moja kwa moja kwenye mlango wa kuingizia.
# of 0ff9bd2a, reviewed: false
checks-tree_distance_usual-title = Matawi ya miti yanaishia angalau 5 m kutoka mtambo
# of 73de9439, reviewed: false
checks-tree_distance_usual-why = Mizizi hufika umbali sawa na matawi, na kivuli hupoza tope.
# of eab980a8, reviewed: false
checks-tree_distance_usual-do = Sogeza mtambo, au punguza matawi ya mti na weka kizuizi cha mizizi; weka umbali wa 10 m kutoka miti mikubwa.
# of 4301b951, reviewed: false
checks-road_distance-title = Barabara na njia za magari ziko angalau 10 m mbali
# of 43eee2b9, reviewed: false
checks-road_distance-why = Uzito wa magurudumu hupasua kuba na mabomba.
# of e7f99ce8, reviewed: false
checks-road_distance-do = Sogeza mtambo, au uwekee uzio na weka nguzo zinazozuia magari.
# of fdbe900a, reviewed: false
checks-not_flooded-title = Eneo halifuriki na haliko kwenye njia ya maji
# of ea3fe43d, reviewed: false
checks-not_flooded-why = Maji ya mafuriko huingia kwenye mtambo, huinua tanki na husambaza tope.
# of ce5d3670, reviewed: false
checks-not_flooded-do = Chagua ardhi ya juu zaidi; inua kingo za mlango wa kuingizia na wa kutolea na elekeza maji ya mvua kubwa yazunguke mtambo.
# of 7957c994, reviewed: false
checks-runoff_kept_away-title = Maji ya paa na ya uwanja hayafiki kwenye mtambo wala udongo ulio juu yake
# of e7c17ab1, reviewed: false
checks-runoff_kept_away-why = Udongo uliolowa hupoteza nguvu, na maji baridi hupunguza utoaji wa gesi.
# of 5f27cf17, reviewed: false
checks-runoff_kept_away-do = Elekeza mifereji ya paa mbali na chimba mtaro wa kugeuza maji.
# of fd84ffe7, reviewed: false
checks-slope_moderate-title = Mteremko wa ardhi hauzidi 15 %
# of 8ed5f42c, reviewed: false
checks-slope_moderate-why = Mtambo unaweza kusukumwa au kuteleza kwenye ardhi yenye mteremko mkali.
# of fbab7cec, reviewed: false
checks-slope_moderate-do = Sawazisha eneo kwa ngazi na litolee maji, na mhandisi aliangalie; zaidi ya 30 % usijenge bila kuta za kuzuia ardhi.
# of f8e0a0e0, reviewed: false
checks-soil_bears_evenly-title = Ardhi ni imara na inabeba uzito kwa usawa
# of dd169ab1, reviewed: false
checks-soil_bears_evenly-why = Udongo wa mfinyanzi unaovimba, ardhi ya kujazwa, udongo wa mboji wa kinamasi, mchanga unaotiririka na ardhi yenye mwamba nusu hudidimia bila usawa na kupasua tanki.
# of f4a5b4e4, reviewed: false
checks-soil_bears_evenly-do = Chimba shimo la majaribio pamoja na fundi mwashi, na chagua mahali pengine au aina nyingine ya mtambo wa biogesi.
# of 7a586007, reviewed: false
checks-overflow_to_own_land-title = Mlango wa kutolea unamwagia kwenye ardhi ya shamba lenyewe inayoweza kutumika
# of 7e8bf715, reviewed: false
checks-overflow_to_own_land-why = Tope lililo barabarani au kwenye ardhi ya jirani huleta ugomvi, na ahadi za kulibeba kila siku hazitimizwi.
# of 027ad1a7, reviewed: false
checks-overflow_to_own_land-do = Elekeza mlango wa kutolea kwenye shamba lako mwenyewe, bwawa au mashimo ya mboji.
# of 304e4f73, reviewed: false
checks-no_low_place_near_outlet-title = Hakuna chumba, banda la mifugo au shimo lililo chini zaidi na ndani ya 5 m kutoka mlango wa kutolea gesi au mlango wa kutolea tope
# of 23650971, reviewed: false
checks-no_low_place_near_outlet-why = Kaboni dayoksaidi na hidrojeni salfaidi ni nzito na hukusanyika mahali pa chini.
# of d452f95f, reviewed: false
checks-no_low_place_near_outlet-do = Hamisha mlango wa kutolea au jaza bonde hilo.
# of 20b9ad4b, reviewed: false
checks-pipe_slope-title = Bomba la gesi linateremka angalau 1 % kuelekea mtego au mtambo
# of 2ba9bcb8, reviewed: false
checks-pipe_slope-why = Maji ya mvuke hujikusanya ndani ya bomba na huziba gesi pale yasipoweza kutiririka kutoka.
# of 63637573, reviewed: false
checks-pipe_slope-do = Laza bomba upya kwa mteremko ulio sawa.
# of 5297c461, reviewed: false
checks-pipe_low_points_trapped-title = Kila sehemu ya chini ya bomba la gesi ina mtego wa maji
# of a51da13b, reviewed: false
checks-pipe_low_points_trapped-why = Maji ya mvuke hufunga bomba kwenye kila sehemu iliyobonyea.
# of 8c23d57c, reviewed: false
checks-pipe_low_points_trapped-do = Inua sehemu iliyobonyea ili bomba litoe maji, au weka mtego hapo ndani ya shimo lenye mfuniko.
# of 0f548621, reviewed: false
checks-pipe_burial-title = Bomba la gesi lililo ardhini liko kwenye kina cha angalau 0.3 m
# of 6efdd518, reviewed: false
checks-pipe_burial-why = Bomba lililo juu juu hupigwa na majembe, kwato na baridi ya kugandisha.
# of dcaf39b9, reviewed: false
checks-pipe_burial-do = Lifukie chini zaidi, kukiwa na utepe wa alama juu yake, na chini ya kina cha kuganda pale ambapo ardhi huganda.
# of e6cf9325, reviewed: false
checks-no_hose_as_fixed_line-title = Bomba la kudumu la gesi ni bomba gumu, si mpira
# of f8650769, reviewed: false
checks-no_hose_as_fixed_line-why = Mpira hukatwa, hupasuka na hutafunwa na panya.
# of a53b7c15, reviewed: false
checks-no_hose_as_fixed_line-do = Laza bomba gumu; tumia mpira wa gesi kwa mita ya mwisho tu hadi kwenye kifaa.
# of 4cb8fdd6, reviewed: false
checks-plant_valve_fitted-title = Vali kuu ipo kwenye mtambo
# of abf19e75, reviewed: false
checks-plant_valve_fitted-why = Gesi ikivuja ndani ya nyumba lazima ifungwe kutoka nje, bila kuingia chumbani.
# of 233b9bda, reviewed: false
checks-plant_valve_fitted-do = Weka vali ya gesi kwenye mtambo kabla gesi yoyote haijatumiwa.
# of 59f81129, reviewed: false
checks-appliance_valves_fitted-title = Kila kifaa cha gesi kina vali yake
# of c6b3270b, reviewed: false
checks-appliance_valves_fitted-why = Gesi huendelea kuingia chumbani kutoka kwenye kifaa ambacho hakiwezi kufungwa.
# of 50de08e5, reviewed: false
checks-appliance_valves_fitted-do = Weka vali kabla ya kila jiko na taa.
# of e82d37b2, reviewed: false
checks-openings_fenced-title = Watoto na wanyama hawawezi kutumbukia kwenye shimo au tundu lolote
# of 89c7d0d3, reviewed: false
checks-openings_fenced-why = Watu huzama au huuawa na gesi kwenye mashimo ya tope yaliyo wazi.
# of a7041da3, reviewed: false
checks-openings_fenced-do = Weka mifuniko imara kwenye matundu yote au yazungushie uzio leo hii.
# of 64a4666e, reviewed: false
checks-inlet_covered-title = Mlango wa kuingizia una mfuniko
# of fe9dd43e, reviewed: false
checks-inlet_covered-why = Mlango wa kuingizia ulio wazi huingiza mvua na huacha watoto, wanyama na mawe yatumbukie.
# of 47c34989, reviewed: false
checks-inlet_covered-do = Tengeneza mfuniko ambao mtoto hawezi kuuinua na ufunge kila baada ya kulisha mtambo.
# of e8807510, reviewed: false
checks-overflow_guarded-title = Shimo la mlango wa kutolea limefunikwa au limewekewa uzio wa reli
# of c8025690, reviewed: false
checks-overflow_guarded-why = Mlango wa kutolea una kina kirefu na hutoa gesi; watu wanaotumbukia humo hawatoki.
# of 3c3525b7, reviewed: false
checks-overflow_guarded-do = Weka mabamba juu yake au uzungushie uzio kabla mtambo haujajazwa.
# of 7fccd0b4, reviewed: false
checks-water_tightness_not_failed-title = Mtambo wa biogesi haujashindwa jaribio lake la maji
# of a01d00d3, reviewed: false
checks-water_tightness_not_failed-why = Uvujaji ulio chini ya tope hauwezi kufikiwa mtambo wa biogesi ukishajazwa, na huchafua ardhi.
# of 0085825c, reviewed: false
checks-water_tightness_not_failed-do = Usijaze. Tafuta ufa na uuzibe, acha mtambo ulowe kwa siku moja, na jaribu tena.
# of aabe479e, reviewed: false
checks-water_tightness_done-title = Mtambo wa biogesi umejaribiwa kwa maji kabla ya kujazwa
# of 6cfc7303, reviewed: false
checks-water_tightness_done-why = Bila jaribio hilo, uvujaji huonekana tu wakati inapobidi mtambo wa biogesi uondolewe tope tena.
# of df011a11, reviewed: false
checks-water_tightness_done-do = Jaza maji, acha mtambo ulowe kwa siku moja, ongeza hadi kwenye alama na angalia baada ya siku nyingine. Ni pale tu maji yanapokuwa haba mno ndipo jaribio linaweza kuachwa, kwa hatari hiyo.
# of f7fe1af9, reviewed: false
checks-water_test_loss-title = Katika jaribio la maji, mtambo wa biogesi unapoteza chini ya 2 % ya ujazo wake kwa siku
# of 1dad6d7a, reviewed: false
checks-water_test_loss-why = Upotevu mkubwa zaidi maana yake ni uvujaji, si kulowa tu.
# of 605ab71b, reviewed: false
checks-water_test_loss-do = Ziba na jaribu tena kabla ya kujaza.
# of c0ba6188, reviewed: false
checks-gas_tightness_passed-title = Nafasi ya gesi imefaulu jaribio lake la kutovuja gesi
# of d9535167, reviewed: false
checks-gas_tightness_passed-why = Kuba au mfuko unaovuja hupoteza gesi mahali watu wanapoishi, na hauwezi kurekebishwa chini ya tope.
# of 081b0d15, reviewed: false
checks-gas_tightness_passed-do = Usijaze. Pandisha presha kwa maji au hewa, subiri saa 24, paka tena popote panapovuja, na rudia hadi ishikilie.
# of 95e94b3a, reviewed: false
checks-gas_test_drop-title = Katika jaribio la gesi, presha haishuki zaidi ya 3 % kwa saa 24
# of 063a1831, reviewed: false
checks-gas_test_drop-why = Kushuka zaidi maana yake ni uvujaji kwenye kuba, mfuniko au bomba.
# of 5d60db0d, reviewed: false
checks-gas_test_drop-do = Paka kuba tena, kalisha mfuniko upya na rudia jaribio.
# of aeb092ad, reviewed: false
checks-gas_test_temperature_steady-title = Kati ya vipimo vya jaribio la gesi, joto halitofautiani zaidi ya 0.5 K
# of 5b2956e7, reviewed: false
checks-gas_test_temperature_steady-why = Nyuzi moja hubadilisha presha zaidi ya kiasi chote kinachoruhusiwa.
# of d87b8a61, reviewed: false
checks-gas_test_temperature_steady-do = Soma kuanzia alfajiri hadi alfajiri kivulini na andika joto.
# of 45eb49ac, reviewed: false
checks-cured_least-title = Uashi na plasta vimekomaa kwa angalau siku 7 kabla ya kujaza
# of a1dcb269, reviewed: false
checks-cured_least-why = Zege changa hupasuka likibeba uzito.
# of 7ef375e6, reviewed: false
checks-cured_least-do = Subiri, na weka ujenzi wote ukiwa na unyevu na kivuli wakati huo.
# of 0eb25a59, reviewed: false
checks-cured_usual-title = Uashi na plasta vimekomaa kwa siku 14 kabla ya kujaza
# of 79a50d79, reviewed: false
checks-cured_usual-why = Kukomaza kwa unyevu kwa wiki mbili hadi tatu ni jambo la kawaida.
# of 07cb57b4, reviewed: false
checks-cured_usual-do = Subiri hadi wiki mbili ziishe, na umwagilie maji kila siku.
# of 201c6077, reviewed: false
checks-backfilled_before_pressure-title = Udongo umerudishwa na kushindiliwa kuzunguka ukuta na juu ya kuba kabla ya presha yoyote
# of aa2ee33e, reviewed: false
checks-backfilled_before_pressure-why = Uzito wa udongo hushikilia kuba dhidi ya gesi.
# of d6a187be, reviewed: false
checks-backfilled_before_pressure-do = Rudisha udongo kwa matabaka yaliyoshindiliwa ya 15 hadi 30 cm kabla ya kujaribu au kujaza.
# of b7ef045b, reviewed: false
checks-dome_cover_depth-title = Angalau 0.4 m za udongo ziko juu ya kuba
# of cc7ad93e, reviewed: false
checks-dome_cover_depth-why = Udongo chini ya hapo hauishindi presha ya gesi kwa uzito.
# of 8b2ec097, reviewed: false
checks-dome_cover_depth-do = Ongeza udongo kabla gesi haijafungiwa ndani.
# of df4bc6c9, reviewed: false
checks-gas_space_coated-title = Nafasi ya gesi ya kuba ya uashi ina tabaka la kupaka lisilopitisha gesi
# of 7bdaf61c, reviewed: false
checks-gas_space_coated-why = Matofali, zege na plasta hupitisha gesi.
# of 0c3c4a72, reviewed: false
checks-gas_space_coated-do = Fundi mwashi anayefanya kazi kwenye hewa inayosogea apake ndani nta, lateksi au rangi ya sintetiki kabla ya kujaza.
# of d2b635bc, reviewed: false
checks-no_cracks-title = Kuba haionyeshi nyufa
# of 368ba189, reviewed: false
checks-no_cracks-why = Gesi hutoka kupitia nyufa.
# of f2e21f13, reviewed: false
checks-no_cracks-do = Mwombe fundi mwashi auchimbe ufa uwe wazi, aujaze kwa mota yenye saruji nyingi kwa matabaka na apake matabaka ya kuziba kwa brashi.
# of 4d91218b, reviewed: false
checks-not_emptied_at_high_groundwater-title = Mtambo hauondolewi tope wakati maji ya chini ya ardhi yako juu ya sakafu yake
# of cea0fd95, reviewed: false
checks-not_emptied_at_high_groundwater-why = Tanki tupu huelea juu au hubomokea ndani.
# of 48dd37cc, reviewed: false
checks-not_emptied_at_high_groundwater-do = Ondoa tope msimu wa kiangazi, au shusha maji ya chini ya ardhi kwanza.
# of a229c8ca, reviewed: false
checks-vent_open_while_emptying-title = Tundu la kutolea gesi liko wazi wakati tope linatolewa
# of 9f89c3fd, reviewed: false
checks-vent_open_while_emptying-why = Lisipokuwa wazi, mfyonzo huvuta hewa ndani na unaweza kupasua kuba.
# of 3ffcb96b, reviewed: false
checks-vent_open_while_emptying-do = Acha geji ishuke hadi sifuri miali yote ya moto ikiwa imezimwa, fungua tundu la kutolea gesi, na toa tope polepole.
# of 4722209a, reviewed: false
checks-pit_walls_supported-title = Kuta za shimo lenye kina cha zaidi ya 1.2 m zimechimbwa kwa mteremko au zimetegemezwa
# of af518c65, reviewed: false
checks-pit_walls_supported-why = Kuta za udongo huanguka bila onyo na kufukia watu.
# of 09425793, reviewed: false
checks-pit_walls_supported-do = Acha kuchimba; zichimbe kuta kwa mteremko au zitegemeze, weka udongo uliochimbwa na watu mbali na ukingo, na fuata kanuni za mahali hapo.
# of d330218e, reviewed: false
checks-built_by_trained_mason-title = Fundi mwashi au mtengenezaji aliyefunzwa anajenga mtambo kwa kufuata mchoro uliothibitishwa
# of 287818e2, reviewed: false
checks-built_by_trained_mason-why = Ujenzi mbaya ni sababu kuu mojawapo ya mitambo kushindwa, na kuba iliyopasuka ni hatari.
# of fc4ce550, reviewed: false
checks-built_by_trained_mason-do = Ajiri fundi mwashi aliyefunzwa, na mhandisi mwenye leseni pale kanuni zinapotaka.
# of 57399def, reviewed: false
checks-users_trained-title = Watumiaji walionyeshwa kuchanganya, vali, jaribio la uvujaji, mtego, mwali na kanuni ya kutoingia ndani kamwe
# of c79afc5e, reviewed: false
checks-users_trained-why = Makosa ya matumizi ndiyo sababu ya kawaida zaidi ya mitambo kusimama.
# of 45248d48, reviewed: false
checks-users_trained-do = Mfunze kila atakayeuendesha kabla ya kuukabidhi.
# of dec80581, reviewed: false
checks-level_above_port-title = Tope liko angalau 0.2 m juu ya ncha ya juu ya matundu ya mlango wa kuingizia na wa kutolea
# of 7c229dbf, reviewed: false
checks-level_above_port-why = Kina kikiwa chini zaidi, gesi hutoka kupitia tundu hilo.
# of 6827cc63, reviewed: false
checks-level_above_port-do = Ongeza maji au tope, na usitoe zaidi ya kinachoingia.
# of f8f95dfb, reviewed: false
checks-first_fill_whole-title = Ujazaji wa kwanza unajaza mtambo wa biogesi hadi kina chake cha kazi kwa mara moja
# of c81f1aa6, reviewed: false
checks-first_fill_whole-why = Kuanza ukiwa umejaa hutoa gesi mapema zaidi; tope jepesi zaidi ni bora kuliko mtambo wa biogesi ulio nusu tupu.
# of 98792e74, reviewed: false
checks-first_fill_whole-do = Kusanya kinyesi zaidi, au jazia maji kwa kiasi kinachofaa, na jazia tena karibuni.
# of fe5b2f35, reviewed: false
checks-first_fill_least-title = Ujazaji wa kwanza unajaza angalau nusu ya mtambo wa biogesi
# of e1f1f398, reviewed: false
checks-first_fill_least-why = Milango ya kuingizia na kutolea lazima iishie chini ya tope, la sivyo gesi hutoka kupitia humo.
# of 169c8547, reviewed: false
checks-first_fill_least-do = Subiri na kusanya kinyesi zaidi kabla ya kujaza.
# of 6e6282d2, reviewed: false
checks-heap_age_month-title = Kinyesi cha zamani zaidi cha ujazaji wa kwanza hakizidi umri wa mwezi mmoja
# of cd7bf45f, reviewed: false
checks-heap_age_month-why = Kinyesi kilichofunikwa hudumu karibu mwezi mmoja, na baada ya hapo huwa kimepoteza sehemu kubwa ya gesi yake.
# of 0d150cd5, reviewed: false
checks-heap_age_month-do = Anza kukusanya baadaye zaidi, tumia cha zamani zaidi shambani, na weka lundo likiwa limefunikwa.
# of f1f1d310, reviewed: false
checks-heap_age_uncovered-title = Kinyesi kilicho bila kufunikwa hakizidi umri wa siku 10
# of 611abaa3, reviewed: false
checks-heap_age_uncovered-why = Jua na mvua huondoa nguvu yake, na kinyesi chenye unyevu huanza kumeng'enywa kwenye lundo.
# of ca331be5, reviewed: false
checks-heap_age_uncovered-do = Funika lundo kwa turubai na uliweke kivulini na likiwa kavu juu.
# of 7c6e2457, reviewed: false
checks-starter_for_other_feed-title = Malisho yasiyoanza yenyewe yanapata angalau 10 % ya tope la kuanzishia
# of fd50336e, reviewed: false
checks-starter_for_other_feed-why = Kinyesi cha ng'ombe na nyati tu ndicho huleta vijidudu vya kutosha; malisho mengine huchacha bila vijidudu hivyo.
# of 5f86ee6f, reviewed: false
checks-starter_for_other_feed-do = Leta tope kutoka mtambo unaofanya kazi, au anza na kinyesi kibichi cha ng'ombe peke yake.
# of 9ad1d40d, reviewed: false
checks-no_excreta_without_starter-title = Kinyesi cha binadamu si sehemu ya ujazaji wa kwanza wenye tope kidogo la kuanzishia
# of 3b733d81, reviewed: false
checks-no_excreta_without_starter-why = Hutoa amonia kabla vijidudu havijaweza kuihimili, na hubeba magonjwa wakati kinaposhikwa.
# of 96f2e583, reviewed: false
checks-no_excreta_without_starter-do = Anza na kinyesi cha ng'ombe na unganisha choo mara gesi inapowaka.
# of c710aac8, reviewed: false
checks-no_poultry_start_without_starter-title = Kinyesi cha kuku hakizidi moja ya tano ya ujazaji wa kwanza wenye tope kidogo la kuanzishia
# of b9dadaab, reviewed: false
checks-no_poultry_start_without_starter-why = Amonia yake husimamisha mtambo wa biogesi ulio mchanga.
# of 1a1f9421, reviewed: false
checks-no_poultry_start_without_starter-do = Anza na kinyesi cha ng'ombe na ongeza kinyesi cha kuku hatua kwa hatua baadaye.
# of 219d644d, reviewed: false
checks-first_charge_carbon_to_nitrogen-title = Ujazaji wa kwanza una uwiano wa kaboni kwa nitrojeni usiozidi 30
# of d99aed41, reviewed: false
checks-first_charge_carbon_to_nitrogen-why = Nitrojeni ikiwa kidogo mno, vijidudu huongezeka polepole.
# of 1b33d730, reviewed: false
checks-first_charge_carbon_to_nitrogen-do = Ongeza kinyesi au mkojo kiasi, na punguza nyasi kavu.
# of c7dabe9f, reviewed: false
checks-no_feed_before_gas-title = Hakuna kinachoongezwa baada ya ujazaji wa kwanza hadi gesi iwake kwa utulivu
# of 0da1d26d, reviewed: false
checks-no_feed_before_gas-why = Kulisha mapema huchachisha tope.
# of e24ab443, reviewed: false
checks-no_feed_before_gas-do = Subiri, na anza kwa malisho madogo gesi inapowaka.
# of 31e1d1b1, reviewed: false
checks-slurry_total_solids_most-title = Tope lililochanganywa halina zaidi ya 12 % ya yabisi jumla
# of 08361a5d, reviewed: false
checks-slurry_total_solids_most-why = Tope zito hutengeneza asidi na utando unaoelea, na halitiririki.
# of 569fce2b, reviewed: false
checks-slurry_total_solids_most-do = Ongeza maji au mkojo hadi kijiti kinachoburutwa ndani yake kisiache alama ya mfereji.
# of af0948fb, reviewed: false
checks-slurry_total_solids_least-title = Tope lililochanganywa lina angalau 4 % ya yabisi jumla
# of 0155a35a, reviewed: false
checks-slurry_total_solids_least-why = Tope jepesi hujaza mtambo wa biogesi maji, hupita haraka na hutoa gesi kidogo.
# of e90e2785, reviewed: false
checks-slurry_total_solids_least-do = Punguza maji na zuia mvua na maji ya kuoshea yasiingie.
# of 2761e31c, reviewed: false
checks-slurry_total_solids_usual-title = Tope lililochanganywa lina 5 hadi 10 % ya yabisi jumla
# of c162c1fe, reviewed: false
checks-slurry_total_solids_usual-why = Ndani ya viwango hivi hutiririka, huchanganyika na hutoa gesi nyingi zaidi kwa ujazo wake.
# of e51374d5, reviewed: false
checks-slurry_total_solids_usual-do = Badilisha kiasi cha maji ndoo moja kwa wakati.
# of da88a6e8, reviewed: false
checks-water_enough-title = Kila siku kuna maji ya kutosha kama malisho yanavyohitaji
# of 8df8c6d0, reviewed: false
checks-water_enough-why = Kulisha tope zito kwa kukosa maji ni sababu kuu mojawapo ya mitambo kushindwa.
# of 9f921d72, reviewed: false
checks-water_enough-do = Tumia mkojo na maji ya kuoshea yasiyo na sabuni, rudisha sehemu ya majimaji ya mlango wa kutolea, au jenga mtambo mdogo zaidi au wa malisho makavu zaidi.
# of 7731fea9, reviewed: false
checks-water_half-title = Kuna angalau nusu ya maji ambayo malisho yanahitaji
# of 228c5fc5, reviewed: false
checks-water_half-why = Kwa chini ya nusu, mtambo wa aina hii hauwezi kuendeshwa.
# of 4990e524, reviewed: false
checks-water_half-do = Usijenge hadi maji yapatikane, kwa mfano tanki la maji ya mvua, au chagua mtambo mkavu wa kujazwa mara moja.
# of 2f3e6340, reviewed: false
checks-recycled_liquid_share-title = Majimaji ya kuchanganyia yanayorudishwa kutoka mlango wa kutolea hayazidi nusu
# of e6ca1caf, reviewed: false
checks-recycled_liquid_share-why = Chumvi na amonia huongezeka maradufu nusu inaporudishwa, na huongezeka haraka zaidi ya hapo.
# of f3f5e271, reviewed: false
checks-recycled_liquid_share-do = Ongeza maji safi.
# of f4aa28e4, reviewed: false
checks-rain_kept_out-title = Mvua na maji ya kusukumia haviingii kwenye mlango wa kuingizia wala wa kutolea
# of 5f73912b, reviewed: false
checks-rain_kept_out-why = Huzimua na kupoza tope, na huosha vijidudu na kuvitoa nje.
# of 7320f31e, reviewed: false
checks-rain_kept_out-do = Funika matundu na chimba mtaro.
# of dfbe27a4, reviewed: false
checks-toilet_flush-title = Choo kilichounganishwa kinasukumwa kwa maji yasiyozidi lita 1
# of f66ecce7, reviewed: false
checks-toilet_flush-why = Tanki la kusukumia maji chooni hufurikisha mtambo wa biogesi.
# of 63afd1fb, reviewed: false
checks-toilet_flush-do = Tumia choo cha kumwagia maji kwa mkono.
# of 1abb56a4, reviewed: false
checks-no_carbide-title = Hakuna kalsiamu kabaidi inayoingia kwenye mtambo wa biogesi
# of 62618b1f, reviewed: false
checks-no_carbide-why = Ikikutana na maji hutoa gesi ya asetilini, ambayo hulipuka.
# of d3d02e40, reviewed: false
checks-no_carbide-do = Izuie isifike kwenye kinyesi cha shamba; kama kiasi kimeingia, zima miali yote ya moto na kaa mbali.
# of aaa88cc9, reviewed: false
checks-no_carcass-title = Hakuna wanyama waliokufa wala taka za machinjio zinazoingia kwenye mtambo wa biogesi
# of 91c2587e, reviewed: false
checks-no_carcass-why = Magonjwa hupita kwenye mtambo wa biogesi wa kaya, na sheria inaziwekea taka kama hizo masharti.
# of 2a29b535, reviewed: false
checks-no_carcass-do = Vifukie au vifanye mboji kama sheria ya afya ya mifugo inavyosema.
# of adcd9cc8, reviewed: false
checks-no_poisons-title = Hakuna dawa ya kuua wadudu, dawa ya kuua vimelea, taka za metali, mbolea ya viwandani wala mmea wenye sumu unaoingia kwenye malisho
# of 6338630e, reviewed: false
checks-no_poisons-why = Huua vijidudu, na gesi hukoma kwa wiki nyingi.
# of a9e13e0f, reviewed: false
checks-no_poisons-do = Elekeza maji ya dawa ya kuogesha mifugo na maji ya kuoshea mahali pengine kwa siku 2 hadi 3, na usiweke mimea iliyopuliziwa dawa, yurea, vitunguu saumu wala majani ya mipichi.
# of 596fc011, reviewed: false
checks-no_antibiotics-title = Hakuna kinyesi cha wanyama wanaotumia antibiotiki kinachoingia kwenye malisho
# of db78ddbd, reviewed: false
checks-no_antibiotics-why = Antibiotiki zilizo kwenye kinyesi husimamisha vijidudu.
# of a536805c, reviewed: false
checks-no_antibiotics-do = Kinyesi hicho kifanye mboji hadi wiki moja au zaidi baada ya matibabu.
# of dc7c8372, reviewed: false
checks-medicine_withdrawn-title = Angalau siku 7 zimepita tangu antibiotiki au dawa ya minyoo ya mwisho
# of 45314432, reviewed: false
checks-medicine_withdrawn-why = Dawa hutoka pamoja na kinyesi kwa siku kadhaa.
# of 6a8e7fab, reviewed: false
checks-medicine_withdrawn-do = Wakati huo kinyesi hicho kifanye mboji; subiri siku 14 baada ya kutibu mifugo yote.
# of a328d851, reviewed: false
checks-no_cyanide_plants-title = Maganda mabichi ya muhogo, machipukizi ya mtama na mimea kama hiyo yalinyaushwa au kulowekwa kabla ya kulishwa
# of 4eb108b6, reviewed: false
checks-no_cyanide_plants-why = Yakiwa mabichi hutoa sianidi, ambayo hudhuru vijidudu na pia watu wanaoyakatakata.
# of 82ed99a5, reviewed: false
checks-no_cyanide_plants-do = Yanyaushe au yachachushe mahali pa wazi na anza na kidogo.
# of 87866bff, reviewed: false
checks-no_grit-title = Hakuna udongo, mchanga, mawe, mifupa wala unga wa mifupa kwenye malisho
# of 862bddf7, reviewed: false
checks-no_grit-why = Huzama na kujaza mtambo wa biogesi hadi inapobidi uondolewe tope.
# of 5c009730, reviewed: false
checks-no_grit-do = Okota kinyesi kwenye sakafu ngumu, acha mchanga na changarawe vitulie kwenye shimo la kuchanganyia, na acha sehemu ya mwisho humo.
# of 6134af5c, reviewed: false
checks-no_foreign_matter-title = Hakuna plastiki, mbao wala manyoya ya ndege kwenye malisho
# of b67b6fa6, reviewed: false
checks-no_foreign_matter-why = Havimeng'enywi; huelea na kuziba mabomba.
# of 5cf394c1, reviewed: false
checks-no_foreign_matter-do = Viondoe kabla ya kuchanganya.
# of c791955b, reviewed: false
checks-no_sharp_things-title = Hakuna chuma wala kioo kwenye malisho
# of b9f2d2b1, reviewed: false
checks-no_sharp_things-why = Vitu vyenye ncha kali hukata mikono na kutoboa mifuko.
# of ca4d0cb1, reviewed: false
checks-no_sharp_things-do = Viondoe kwa uma na vaa glavu.
# of 03bb8ab0, reviewed: false
checks-bedding_straw_little-title = Nyasi kavu za kulalia mifugo haziingizwi kwenye malisho
# of d63a69d8, reviewed: false
checks-bedding_straw_little-why = Nyasi ndefu huelea, hufanya tabaka gumu la juu na huziba mlango wa kuingizia na wa kutolea.
# of 382f5776, reviewed: false
checks-bedding_straw_little-do = Ziondoe kwa reki, au zikatekate vipande vya 1 hadi 4 cm na ziache zioze kwanza.
# of 6c1f8ab5, reviewed: false
checks-no_oil-title = Hakuna mafuta, shahamu wala mafuta ya injini au ya taa yanayoingia kwenye malisho
# of 913a7370, reviewed: false
checks-no_oil-why = Utando wa mafuta na asidi za mafuta husimamisha vijidudu na hutengeneza povu.
# of 760868bd, reviewed: false
checks-no_oil-do = Vizuie visiingie.
# of 1418a386, reviewed: false
checks-no_soap-title = Hakuna sabuni wala maji ya kuoshea yanayoingia kwenye malisho
# of 4eb380ce, reviewed: false
checks-no_soap-why = Sabuni hudhuru vijidudu na hutengeneza povu.
# of 80bc2a30, reviewed: false
checks-no_soap-do = Elekeza maji ya kuoshea kwenye bustani.
# of 8ca6a076, reviewed: false
checks-particle_length_usual-title = Mimea imekatwakatwa vipande vya 1 hadi 4 cm
# of a4a315ba, reviewed: false
checks-particle_length_usual-why = Vipande vifupi humeng'enywa na hutiririka.
# of 389cf358, reviewed: false
checks-particle_length_usual-do = Ikatekate, na iache ioze kwa siku kadhaa.
# of 6c03ec03, reviewed: false
checks-crop_residue_more-title = Mabaki ya mazao hayazidi 25 % ya yabisi zinazolishwa
# of 936a2170, reviewed: false
checks-crop_residue_more-why = Zaidi ya hapo huelea kwenye mtambo wa biogesi usiokorogwa.
# of b4aa2589, reviewed: false
checks-crop_residue_more-do = Yakatekate na yaozeshe kwanza, koroga kila siku, au punguza kiasi.
# of 6ebe26a5, reviewed: false
checks-crop_residue_most-title = Mabaki ya mazao hayazidi 40 % ya yabisi zinazolishwa katika mtambo wa biogesi usiokorogwa
# of 48ffe0da, reviewed: false
checks-crop_residue_most-why = Tabaka gumu la juu huziba mtambo wa biogesi na inabidi lichimbwe na kutolewa.
# of 9334cf72, reviewed: false
checks-crop_residue_most-do = Yameng'enye kwenye tanki la kujazwa mara moja, au yafanye mboji.
# of 3d571357, reviewed: false
checks-poultry_share_usual-title = Kinyesi cha kuku ni karibu moja ya tano ya samadi iliyochanganywa
# of 7bc9a09a, reviewed: false
checks-poultry_share_usual-why = Sehemu moja kati ya tano ilitoa gesi nyingi zaidi ikichanganywa na kinyesi cha ng'ombe.
# of 4514d5bf, reviewed: false
checks-poultry_share_usual-do = Changanya kinyesi cha ng'ombe zaidi.
# of c9e61a12, reviewed: false
checks-poultry_share_most-title = Kinyesi cha kuku hakizidi nusu ya malisho
# of 092ba5e0, reviewed: false
checks-poultry_share_most-why = Bila kuzimuliwa na kuzoeshwa polepole, amonia husimamisha gesi.
# of d9288cde, reviewed: false
checks-poultry_share_most-do = Kipunguze chini ya nusu, zimua vizuri, na kiongeze polepole kwa miezi kadhaa.
# of ab370d2c, reviewed: false
checks-acid_feed_share-title = Matunda, maji ya maziwa (whey), saileji na mabaki ya chakula hayazidi 25 % ya yabisi tete zinazolishwa
# of 30e7d00f, reviewed: false
checks-acid_feed_share-why = Huchacha haraka na tope huchacha pamoja navyo.
# of bc9d7365, reviewed: false
checks-acid_feed_share-do = Changanya na kinyesi na ongeza sehemu hiyo polepole.
# of aa530977, reviewed: false
checks-feeding_daily-title = Mtambo unalishwa kila siku
# of 7e4294aa, reviewed: false
checks-feeding_daily-why = Malisho ya kiasi sawa hutoa mwali wa kiasi sawa; mitambo iliyochunguzwa ilinyimwa malisho kisha ikalishwa kupita kiasi.
# of b1ee787a, reviewed: false
checks-feeding_daily-do = Lisha kila siku kwa saa ile ile.
# of 50ecdcd2, reviewed: false
checks-feeding_three_days-title = Mtambo unalishwa angalau kila siku ya tatu
# of 24a7af1c, reviewed: false
checks-feeding_three_days-why = Gesi hupanda na kushuka, na vipimo vikubwa huleta asidi.
# of b35714e9, reviewed: false
checks-feeding_three_days-do = Lisha kwa vipimo vidogo zaidi mara nyingi zaidi.
# of 04ba761e, reviewed: false
checks-feeding_weekly-title = Mtambo unalishwa angalau mara moja kwa wiki
# of af9b675c, reviewed: false
checks-feeding_weekly-why = Ikipita wiki moja kati ya ulishaji mmoja na mwingine, wataalamu hawauiti tena ulishaji wa kawaida.
# of 1266fd4c, reviewed: false
checks-feeding_weekly-do = Gawanya malisho katika sehemu za kila siku au za kila siku mbili.
# of bd58d1a4, reviewed: false
checks-feeding_fortnight-title = Mtambo unalishwa mara nyingi zaidi ya mara moja kwa wiki mbili
# of 430a118e, reviewed: false
checks-feeding_fortnight-why = Ukilishwa kila wiki mbili hufanya kazi zaidi kama mtambo wa kujazwa mara moja, wenye pengo refu la gesi.
# of 2897d362, reviewed: false
checks-feeding_fortnight-do = Lisha mara nyingi zaidi, au upange kama mtambo wa kujazwa mara moja pamoja na wa pili kwa zamu.
# of d2ce10b6, reviewed: false
checks-feed_increase_slow-title = Malisho ya kila siku hayaongezeki zaidi ya 25 % kwa wiki
# of 2beb9fbe, reviewed: false
checks-feed_increase_slow-why = Vijidudu huzoea polepole.
# of 6dd1347f, reviewed: false
checks-feed_increase_slow-do = Ongeza malisho kwa hatua katika kipindi cha mara moja au mbili ya muda wa kukaa kwa tope.
# of dfdaab2a, reviewed: false
checks-loading_simple-title = Kiwango cha ulishaji hakizidi 1.5 kg/m3/d
# of cc5b63f6, reviewed: false
checks-loading_simple-why = Hicho ndicho kikomo cha juu kwa mtambo rahisi wa shambani; kulisha kupita kiasi huonekana kwa pH kushuka.
# of df0421a4, reviewed: false
checks-loading_simple-do = Punguza malisho, au jenga mkubwa zaidi.
# of a5416d57, reviewed: false
checks-loading_most-title = Kiwango cha ulishaji kiko chini ya 2.5 kg/m3/d
# of 7e741f3a, reviewed: false
checks-loading_most-why = Hadi 2.4 kilihimiliwa juu ya 20 °C katika mtambo ulioanzishwa vizuri; zaidi ya hapo kuna uwezekano mkubwa wa kuchacha.
# of d30d42e9, reviewed: false
checks-loading_most-do = Punguza malisho kwa nusu sasa hivi na yaongeze tena kwa hatua.
# of d64e997f, reviewed: false
checks-loading_cold-title = Chini ya 18 °C, kiwango cha ulishaji hakizidi 0.8 kg/m3/d
# of 53c782c3, reviewed: false
checks-loading_cold-why = Vijidudu vyenye baridi hula polepole, na vinachoacha hugeuka asidi.
# of 68e80e69, reviewed: false
checks-loading_cold-do = Punguza malisho katika msimu wa baridi au pasha mtambo joto.
# of dbc97f24, reviewed: false
checks-retention_least-title = Muda wa kukaa kwa tope ni angalau siku 30
# of 5769a48e, reviewed: false
checks-retention_least-why = Muda mfupi zaidi huosha vijidudu na kuvitoa nje, na huacha vimelea vingi zaidi vya magonjwa vikiwa hai.
# of 70ec6f10, reviewed: false
checks-retention_least-do = Punguza tope unalolisha, punguza maji, au jenga mkubwa zaidi.
# of 0769464e, reviewed: false
checks-retention_usual-title = Muda wa kukaa kwa tope ni angalau siku 40
# of 942ca170, reviewed: false
checks-retention_usual-why = Mitambo rahisi isiyopashwa joto inapaswa kuwa na siku 40, na siku 60 hadi 80 ni za kawaida.
# of 340de15e, reviewed: false
checks-retention_usual-do = Punguza malisho kidogo, au jenga wa ukubwa unaofuata.
# of f49dc52e, reviewed: false
checks-retention_below_25-title = Chini ya 25 °C, muda wa kukaa kwa tope ni angalau siku 40
# of 96f968e4, reviewed: false
checks-retention_below_25-why = Umeng'enyaji huenda polepole zaidi kwenye tope lenye ubaridi zaidi.
# of add3b6e5, reviewed: false
checks-retention_below_25-do = Jenga mkubwa zaidi au punguza malisho.
# of a1c0f391, reviewed: false
checks-retention_below_20-title = Chini ya 20 °C, muda wa kukaa kwa tope ni angalau siku 60
# of bff9731a, reviewed: false
checks-retention_below_20-why = Mitambo ya milimani kwenye ubaridi hujengwa kwa siku karibu 70.
# of c3f8f01e, reviewed: false
checks-retention_below_20-do = Jenga mkubwa zaidi, punguza malisho, au weka kinga ya kuhifadhi joto.
# of 4d88b4fe, reviewed: false
checks-retention_below_15-title = Chini ya 15 °C, muda wa kukaa kwa tope ni angalau siku 100
# of b9f8764e, reviewed: false
checks-retention_below_15-why = Umeng'enyaji kwenye baridi huchukua zaidi ya siku mia moja.
# of 66c09b17, reviewed: false
checks-retention_below_15-do = Weka mtambo kinga ya kuhifadhi joto au ufunike, au usitegemee gesi yake.
# of c19f5ddc, reviewed: false
checks-retention_most-title = Muda wa kukaa kwa tope hauzidi siku 120
# of c93d5192, reviewed: false
checks-retention_most-why = Muda mrefu zaidi huongeza gesi kidogo tu, hivyo mtambo ni mkubwa kuliko malisho yake.
# of 75556c08, reviewed: false
checks-retention_most-do = Kusanya kinyesi zaidi, au jenga mdogo zaidi.
# of 15f3bcce, reviewed: false
checks-fed_share_least-title = Mtambo unapata angalau nusu ya malisho yaliyopangwa kwenye usanifu wake
# of 66c294be, reviewed: false
checks-fed_share_least-why = Sehemu kubwa ya mitambo ya kaya inayokatisha tamaa hunyimwa malisho.
# of f5c7e917, reviewed: false
checks-fed_share_least-do = Kusanya kinyesi zaidi, fungia mifugo zizini usiku, au tarajia gesi pungufu.
# of a63e0053, reviewed: false
checks-fed_share_usual-title = Mtambo unapata angalau 80 % ya malisho yaliyopangwa kwenye usanifu wake
# of 4f9079cd, reviewed: false
checks-fed_share_usual-why = Gesi hupungua pamoja na malisho.
# of 68528bb1, reviewed: false
checks-fed_share_usual-do = Kusanya kinyesi zaidi.
# of b7f808aa, reviewed: false
checks-total_volume_possible_least-title = Ujazo wote ni angalau nusu ya mdogo kabisa unaojengwa wa aina hii
# of d425c651, reviewed: false
checks-total_volume_possible_least-why = Hakuna anayejenga mdogo hivyo, kwa hiyo namba au kizio chake si sahihi.
# of 6ce3b962, reviewed: false
checks-total_volume_possible_least-do = Angalia kizio, kisha nukta ya desimali; tafuta ukubwa kwenye mchoro.
# of 1b12a8c7, reviewed: false
checks-total_volume_possible_most-title = Ujazo wote si zaidi ya mara mbili ya mkubwa kabisa unaojengwa wa aina hii
# of 102a1048, reviewed: false
checks-total_volume_possible_most-why = Hakuna anayejenga mkubwa hivyo; lita zilizoandikwa badala ya mita za ujazo ndilo kosa la kawaida.
# of 6ce3b962, reviewed: false
checks-total_volume_possible_most-do = Angalia kizio, kisha nukta ya desimali; tafuta ukubwa kwenye mchoro.
# of a12e3662, reviewed: false
checks-gas_storage_possible-title = Hifadhi ya gesi ni theluthi hadi mara tatu ya ya kawaida kwa ukubwa huu
# of 9fd8e258, reviewed: false
checks-gas_storage_possible-why = Hailingani na ujazo wote, kwa hiyo moja kati ya hizo mbili si sahihi.
# of 26a199ce, reviewed: false
checks-gas_storage_possible-do = Angalia vizio vyote viwili; chukua hifadhi kutoka kwenye mchoro au kutokana na kushuka kwa kina cha tope.
# of 19ba941f, reviewed: false
checks-air_temperature_possible-title = Wastani wa joto la hewa wa mwaka ni wa mahali ambapo watu hufuga
# of 2fb78b9e, reviewed: false
checks-air_temperature_possible-why = Hakuna mahali penye watu penye wastani kama huo; digrii za Fahrenheit zilizoandikwa badala ya Celsius ndilo kosa la kawaida.
# of 50ee3d17, reviewed: false
checks-air_temperature_possible-do = Angalia kizio, na kwamba ni wastani wa mwaka na si wa siku.
# of 05c21d9f, reviewed: false
checks-feed_mass_possible_most-title = Malisho si zaidi ya mtambo wowote rahisi unavyoweza kubeba
# of 412c08c8, reviewed: false
checks-feed_mass_possible_most-why = Zaidi ya mara tatu ya kiasi kikubwa kabisa ambacho mtambo rahisi hubeba hakilishwi kwa muda mrefu, kwa hiyo uzito au ujazo umeandikwa vibaya.
# of 6fc62bd8, reviewed: false
checks-feed_mass_possible_most-do = Angalia vizio vya malisho na ujazo, na kama uzito ni wa siku moja; pima malisho kwa wiki moja.
# of e187b02a, reviewed: false
checks-feed_mass_possible_least-title = Kinacholishwa ni zaidi ya makombo
# of a2b6ff5d, reviewed: false
checks-feed_mass_possible_least-why = Hakuna anayepima kidogo hivyo, kwa hiyo uzito au ujazo umeandikwa vibaya.
# of e9faa330, reviewed: false
checks-feed_mass_possible_least-do = Angalia vizio vya malisho na ujazo; tani zilizoandikwa badala ya kilo ni kosa la kawaida.
# of 2a8dbdd0, reviewed: false
checks-feed_within_herd-title = Malisho si zaidi ya mara mbili ya kiasi kikubwa kabisa ambacho kundi linaweza kutoa
# of ccfea407, reviewed: false
checks-feed_within_herd-why = Mifugo hii haitoi kiasi hicho, kwa hiyo malisho, idadi au kizio kimeandikwa vibaya, isipokuwa kinyesi kinanunuliwa.
# of 9cdd7d57, reviewed: false
checks-feed_within_herd-do = Hesabu mifugo na pima kinyesi cha siku; angalia kizio cha malisho.
# of 4296742a, reviewed: false
checks-water_volume_possible_most-title = Maji si zaidi ya mara tatu ya mengi kabisa ambayo malisho haya hupunguzwa nayo
# of 7c918971, reviewed: false
checks-water_volume_possible_most-why = Hakuna anayebeba mengi hivyo, kwa hiyo yameandikwa vibaya, au maji ya mvua na ya kuoshea yanaingia.
# of c364250d, reviewed: false
checks-water_volume_possible_most-do = Angalia kizio na kama ujazo ni wa siku moja; zuia maji ya mvua na ya kuoshea.
# of 0903d837, reviewed: false
checks-water_volume_possible_least-title = Maji yanayoongezwa ni zaidi ya tone
# of 56c822e0, reviewed: false
checks-water_volume_possible_least-why = Hakuna anayepima kidogo hivyo; mita za ujazo zilizoandikwa badala ya lita ndilo kosa la kawaida.
# of 4912706b, reviewed: false
checks-water_volume_possible_least-do = Angalia kizio; hesabu ndoo za siku.
# of d29022b5, reviewed: false
checks-gas_measured_possible_most-title = Gesi iliyopimwa si zaidi ya mara moja na nusu ya nyingi kabisa inayotolewa na malisho
# of 86332f26, reviewed: false
checks-gas_measured_possible_most-why = Kiasi hicho hakipatikani kwa malisho haya, kwa hiyo malisho au gesi imeandikwa vibaya.
# of a846ec1e, reviewed: false
checks-gas_measured_possible_most-do = Angalia kizio cha mita na kama ujazo ni wa siku moja, kisha pima malisho kwa wiki moja.
# of 6c28af86, reviewed: false
checks-gas_measured_possible_least-title = Gesi iliyopimwa ni zaidi ya dalili tu
# of af482805, reviewed: false
checks-gas_measured_possible_least-why = Mtambo unaotoa kidogo hivyo hautoi kitu, na hakuna mita ya nyumbani inayousoma; maelfu ya lita zilizoandikwa badala ya mita za ujazo ni kosa la kawaida.
# of d8716286, reviewed: false
checks-gas_measured_possible_least-do = Angalia kizio cha mita; ikiwa ni sahihi, tafuta uvujaji.
# of 141bc083, reviewed: false
checks-gas_pressure_possible-title = Presha ya gesi si zaidi ya mara tano ya ya juu kabisa inayotumika
# of 639999ed, reviewed: false
checks-gas_pressure_possible-why = Mtambo ungekuwa umepasuka au umerusha kizuizi chake cha maji, kwa hiyo namba au kizio chake si sahihi.
# of c359d054, reviewed: false
checks-gas_pressure_possible-do = Soma geji tena na angalia kizio; ikiwa ni sahihi, funga gesi, kaa mbali na umpigie aliyejenga mtambo.
# of e2cdd440, reviewed: false
checks-ph_possible-title = pH ni ile ambayo tope la mtambo huwa nayo
# of ddfbedc5, reviewed: false
checks-ph_possible-why = Hata tope lililochacha na kinyesi cha kuku kitupu huwa kati yake, kwa hiyo kipimo au nukta ya desimali si sahihi.
# of 9e396336, reviewed: false
checks-ph_possible-do = Pima tena kwa karatasi mpya au mita iliyorekebishwa.
# of 73638941, reviewed: false
checks-visited_after_commissioning-title = Ziara ni baada ya mtambo kuanza kazi
# of 2f988dc1, reviewed: false
checks-visited_after_commissioning-why = Tarehe moja kati ya hizo mbili si sahihi, kwa hiyo umri na uanzishaji haujulikani.
# of 2b88614d, reviewed: false
checks-visited_after_commissioning-do = Tafuta tarehe zote mbili; zingatia mpangilio wa siku na mwezi.
# of fe036f1e, reviewed: false
checks-size_feeds_herd-title = Mtambo ni mkubwa wa kutosha kwa kile kundi linachotoa
# of a9bf314a, reviewed: false
checks-size_feeds_herd-why = Kwa maji ya kawaida kinyesi cha kundi kingetoka kabla ya kumeng'enywa, hata kwa muda mfupi kabisa wa kukaa ambao ni wa kawaida hapa.
# of b3f36964, reviewed: false
checks-size_feeds_herd-do = Lisha sehemu ya kinyesi na iliyobaki ifanye mboji, au jenga mtambo wa pili.
# of be59fc21, reviewed: false
checks-herd_fills_size-title = Kundi linatoa ya kutosha kwa mtambo
# of 97e01b39, reviewed: false
checks-herd_fills_size-why = Ni chini ya nusu ya kinachoujaza kwa muda mrefu kabisa wa kukaa ulio wa kawaida; kaya inalipia ujazo usiotoa gesi.
# of b90d7ebb, reviewed: false
checks-herd_fills_size-do = Hesabu mifugo tena; ongeza malisho mengine, au jenga inayofuata midogo zaidi.
# of 98262224, reviewed: false
checks-gas_is_measured-title = Gesi ya siku ilipimwa
# of 323fc519, reviewed: false
checks-gas_is_measured-why = Bila hiyo hakuna anayeweza kusema kama gesi inapotea.
# of 04030540, reviewed: false
checks-gas_is_measured-do = Soma mita kwa wiki moja, au hesabu saa za kila kichomeo.
# of 8767dd99, reviewed: false
checks-gas_far_below_expected-title = Gesi iliyopimwa ni angalau nne ya tano ya kidogo kabisa kinachotolewa na malisho
# of 68fbc199, reviewed: false
checks-gas_far_below_expected-why = Mtambo mmoja wenye afya kati ya ishirini uko chini kidogo ya kadirio; chini hivyo, gesi inapotea, au tope ni gonjwa.
# of 4cfe3fbb, reviewed: false
checks-gas_far_below_expected-do = Tafuta uvujaji kwa maji ya sabuni, kisha angalia pH, joto, tabaka gumu la juu na mashapo, na pima malisho kwa wiki moja.
# of f3f97830, reviewed: false
checks-gas_not_above_expected-title = Gesi iliyopimwa iko ndani ya kile malisho yanachoweza kutoa
# of fde99de1, reviewed: false
checks-gas_not_above_expected-why = Ni zaidi ya malisho yanavyotoa hata kwenye mtambo bora kuliko yote ya aina hiyo, kwa hiyo malisho au gesi imeandikwa vibaya, au kitu kingine kinalishwa pia.
# of 847b534f, reviewed: false
checks-gas_not_above_expected-do = Uliza nini kingine kinaingia, pima malisho kwa wiki moja, na angalia mita.
# of f1e1e335, reviewed: false
checks-running_steadily-title = Umelishwa kwa angalau muda mmoja wa kukaa
# of e3aac22e, reviewed: false
checks-running_steadily-why = Hadi wakati huo gesi bado inaongezeka, kwa hiyo hailinganishwi na ya ulishaji wa mara kwa mara.
# of 8440ebfe, reviewed: false
checks-running_steadily-do = Pima gesi tena mtambo utakapokuwa umelishwa kwa muda mmoja wa kukaa.
# of 5079dd4c, reviewed: false
checks-losses_do_not_undo_savings-title = Methani inayopotea inaongeza joto la dunia pungufu kuliko kinachookolewa
