# of 38c9ff27, reviewed: false
facts-distance_to_well-name = Umbali hadi chanzo cha karibu zaidi cha maji ya kunywa
# of 5ad04ff0, reviewed: false
facts-distance_to_well-description = Kutoka ukingo wa karibu zaidi wa mtambo wa biogesi au shimo la tope, ukipimwa ardhini.
# of 21c57e66, reviewed: false
facts-distance_to_dwelling-name = Umbali hadi nyumba ya karibu zaidi ya kuishi
# of 70da58ac, reviewed: false
facts-distance_to_dwelling-description = Kutoka ukuta wa karibu zaidi wa nyumba ambamo watu wanaishi au kulala.
# of f2d554d5, reviewed: false
facts-distance_to_kitchen-name = Umbali hadi jikoni
# of b48e3cf9, reviewed: false
facts-distance_to_kitchen-description = Urefu wa njia ya bomba la gesi.
# of 0b2059ce, reviewed: false
facts-distance_to_stable-name = Umbali hadi banda la mifugo
# of f0777e92, reviewed: false
facts-distance_to_stable-description = Kutoka mahali kinyesi kinapoanguka hadi mlango wa kuingizia.
# of 9bf57270, reviewed: false
facts-distance_to_tree-name = Umbali hadi mti wa karibu zaidi
# of 174355a3, reviewed: false
facts-distance_to_tree-description = Hadi mwisho wa matawi yake.
# of 95f609de, reviewed: false
facts-distance_to_road-name = Umbali hadi barabara au njia ya magari iliyo karibu zaidi
# of 024c45a9, reviewed: false
facts-groundwater_depth-name = Kina hadi maji ya chini ya ardhi ya juu kabisa
# of ae6f51fb, reviewed: false
facts-groundwater_depth-description = Kutoka uso wa ardhi hadi kina cha juu kabisa cha maji ya chini ya ardhi katika mwaka.
# of efa578f5, reviewed: false
facts-groundwater_below_pit-name = Ardhi kavu chini ya shimo
# of 8035b76b, reviewed: false
facts-groundwater_below_pit-description = Kutoka sakafu ya shimo kwenda chini hadi kina cha juu kabisa cha maji ya chini ya ardhi katika mwaka; huwa hasi maji yanapokuwa ndani ya shimo.
# of 059d91ba, reviewed: false
facts-pit_depth-name = Kina cha shimo
# of 83c2caf8, reviewed: false
facts-inside_building-name = Mtambo uko ndani ya jengo au chini yake
# of 853cc67e, reviewed: false
facts-inside_building-description = Ni ndiyo pia kwa banda la mifugo au kibanda kinachotumiwa kwa kazi nyingine.
# of a0fe54de, reviewed: false
facts-soil_class-name = Ardhi ya mahali pa mtambo
# of 1636b743, reviewed: false
facts-flood_prone-name = Eneo hufurika au liko kwenye njia ya maji
# of 1b1830b4, reviewed: false
facts-runoff_reaches_plant-name = Maji ya paa au ya uwanja yanafika kwenye mtambo
# of e5c4e3cd, reviewed: false
facts-slope-name = Mteremko wa ardhi
# of f28b16c8, reviewed: false
facts-overflow_to_own_land-name = Mlango wa kutolea unamwagia kwenye ardhi ya shamba lenyewe inayoweza kutumika
# of 61aa8b43, reviewed: false
facts-low_place_near_outlet-name = Chumba, banda la mifugo au shimo liko chini zaidi na ndani ya 5 m kutoka mlango wa kutolea gesi au mlango wa kutolea tope
# of 2dcd26cb, reviewed: false
facts-latrine_linked-name = Choo kimeunganishwa na mtambo
# of 1917688b, reviewed: false
facts-pit_walls_supported-name = Kuta za shimo zimechimbwa kwa mteremko au zimetegemezwa
# of 3e2aaf1d, reviewed: false
facts-structure_kind-name = Aina ya mtambo wa biogesi
# of fa7100c8, reviewed: false
facts-cured_for-name = Muda wa kukomaa
# of e09dda43, reviewed: false
facts-cured_for-description = Siku tangu kumwaga zege au kupiga plasta kwa mara ya mwisho.
# of a72ed627, reviewed: false
facts-water_tightness_test-name = Jaribio la maji la mtambo wa biogesi
# of a7b4fab6, reviewed: false
facts-gas_tightness_test-name = Jaribio la kutovuja gesi la nafasi ya gesi
# of c59e127a, reviewed: false
facts-water_test_loss-name = Upotevu katika jaribio la maji
# of 83996057, reviewed: false
facts-water_test_loss-description = Sehemu ya ujazo wa mtambo wa biogesi inayopotea kwa siku moja, baada ya siku moja ya kulowa.
# of 24a552cf, reviewed: false
facts-gas_test_drop-name = Presha iliyopotea katika jaribio la gesi
# of 23d5387b, reviewed: false
facts-gas_test_drop-description = Sehemu ya presha ya kuanzia inayopotea kwa saa 24.
# of 777c8358, reviewed: false
facts-gas_test_temperature_change-name = Tofauti ya joto kati ya vipimo vya jaribio la gesi
# of 0adaf29e, reviewed: false
facts-gas_test_temperature_change-description = Bila alama ya kujumlisha au kutoa.
# of f4c2e4d4, reviewed: false
facts-inlet_covered-name = Mlango wa kuingizia una mfuniko
# of 2a9fd18f, reviewed: false
facts-overflow_guarded-name = Shimo la mlango wa kutolea limefunikwa au limewekewa uzio wa reli
# of 06065bb0, reviewed: false
facts-openings_fenced-name = Mashimo na matundu yote yana mifuniko au uzio
# of 7135d30b, reviewed: false
facts-openings_fenced-description = Ili mtoto wala mnyama asiweze kutumbukia.
# of d3f0078e, reviewed: false
facts-backfilled-name = Udongo umerudishwa na kushindiliwa kuzunguka ukuta na juu ya kuba
# of fc5e55de, reviewed: false
facts-dome_cover_depth-name = Udongo juu ya kuba
# of 855052c6, reviewed: false
facts-gas_space_coated-name = Nafasi ya gesi ina tabaka la kupaka lisilopitisha gesi
# of 50c211cb, reviewed: false
facts-dome_cracked-name = Nyufa zinaonekana kwenye kuba au ukuta
# of 47c53782, reviewed: false
facts-emptied_at_high_groundwater-name = Mtambo unaondolewa tope wakati maji ya chini ya ardhi yako juu ya sakafu yake
# of 1836ece5, reviewed: false
facts-vent_open_while_emptying-name = Tundu la kutolea gesi liko wazi wakati tope linatolewa
# of 063d9045, reviewed: false
facts-built_by_trained_mason-name = Umejengwa na fundi mwashi au mtengenezaji aliyefunzwa kwa kufuata mchoro uliothibitishwa
# of a56bff99, reviewed: false
facts-outlet_clear-name = Mlango wa kutolea haujaziba
# of 1699cae2, reviewed: false
facts-level_above_port-name = Kina cha tope juu ya ncha ya juu ya matundu ya ndani ya mlango wa kuingizia na wa kutolea
# of c626c488, reviewed: false
facts-digester_temperature-name = Joto la tope
# of bd2d0cb4, reviewed: false
facts-hydraulic_retention_time-name = Muda wa kukaa kwa tope
# of e7e17c33, reviewed: false
facts-hydraulic_retention_time-description = Ujazo wa tope kwenye kina cha kazi ukigawanywa kwa tope linalolishwa kwa siku.
# of 2fbdc5ed, reviewed: false
facts-scum_thickness-name = Unene wa utando unaoelea
# of 3cad2c3d, reviewed: false
facts-first_fill_share-name = Ujazo wa kwanza
# of c1fe1373, reviewed: false
facts-first_fill_share-description = Sehemu ya ujazo wote iliyojazwa na ujazaji wa kwanza.
# of 7d750cde, reviewed: false
facts-first_gas_vented-name = Gesi ya kwanza iliachiliwa nje ya nyumba, bila kuchomwa
# of e5d473e1, reviewed: false
facts-gas_pressure-name = Presha ya gesi kwenye mtambo wa biogesi
# of c391a36a, reviewed: false
facts-gas_pressure-description = Kulinganisha na hewa ya wazi, kwa mfano kimo cha maji kwenye mrija.
# of b48c0abe, reviewed: false
facts-gas_sufficiency-name = Gesi ya siku kugawanya kwa gesi inayotakiwa kwa siku
# of 03bb170d, reviewed: false
facts-gas_use_covered-name = Sehemu ya gesi inayotakiwa iliyopo katika saa inapotakiwa
# of 62e196cb, reviewed: false
facts-gas_vented_share-name = Sehemu ya gesi inayoachiliwa bila kuchomwa kwa sababu hifadhi imejaa
# of 6f1bad23, reviewed: false
facts-pipe_pressure_drop-name = Presha inayopotea kwenye bomba la gesi katika saa yenye matumizi makubwa zaidi
# of f193c809, reviewed: false
facts-appliance_pressure_ratio-name = Presha ya gesi kwenye kifaa kugawanya kwa presha ndogo kabisa ambayo kifaa kinahitaji
# of fb53c40a, reviewed: false
facts-appliance_pressure_ratio-description = Wakati vifaa vyote vinavyotumiwa katika saa yenye matumizi makubwa zaidi vinawaka.
# of 9977d61b, reviewed: false
facts-flame_arrester-name = Kizuia mwali au kizuizi cha maji kipo kwenye bomba kabla ya vifaa vya gesi
# of 5813eaa2, reviewed: false
facts-hydrogen_sulfide_in_gas-name = Hidrojeni salfaidi kwenye biogesi
# of 12eed560, reviewed: false
facts-condensate_trap-name = Bomba la gesi lina mtego wa maji ya mvuke au linarudisha maji kwenye mtambo
# of 5391f1ef, reviewed: false
facts-trap_water_level-name = Kina cha maji kwenye kizuizi cha kipunguza presha na kwenye mtego
# of 78d9e8e3, reviewed: false
facts-pressure_relief-name = Kipunguza presha kimewekwa
# of 14f44f6d, reviewed: false
facts-relief_opens_at-name = Presha ambayo kipunguza presha kinafunguka
# of 767032d2, reviewed: false
facts-relief_outlet_to_building-name = Umbali wa mdomo wa kipunguza presha kutoka majengo na njia
# of 25161ef6, reviewed: false
facts-separate_gas_holder-name = Gesi huhifadhiwa kwenye chombo au mfuko ulio kando
# of 969f754a, reviewed: false
facts-flame_distance-name = Umbali kutoka mtambo wa biogesi hadi mwali au moto wa karibu zaidi
# of df68c3b7, reviewed: false
facts-flame_distance-description = Mahali pa karibu zaidi ambapo kitu chochote kinawaka; kama hakuna kingine kinachowaka, taja umbali hadi kwenye jiko.
# of 94b8a1e0, reviewed: false
facts-first_flame_place-name = Mahali pa mwali wa kwanza
# of 3936ce65, reviewed: false
facts-first_flame_distance-name = Umbali kutoka mtambo wa biogesi hadi mahali pa mwali wa kwanza
# of 3693d870, reviewed: false
facts-leak_test_method-name = Jinsi uvujaji unavyotafutwa
# of de4075d8, reviewed: false
facts-leak_found-name = Mapovu katika jaribio la maji ya sabuni
# of d7bec5bf, reviewed: false
facts-pipe_tightness_test-name = Jaribio la presha la mabomba
# of d9354179, reviewed: false
facts-plant_valve-name = Vali kuu kwenye mtambo
# of dfcf8b99, reviewed: false
facts-appliance_valve-name = Vali kwenye kila kifaa cha gesi
# of db30d084, reviewed: false
facts-main_valve_shut_at_night-name = Vali kuu hufungwa usiku na wakati hakuna mtu nyumbani
# of 4358c831, reviewed: false
facts-hose_as_fixed_line-name = Mpira wa gesi unatumika kama bomba la kudumu la gesi
# of 99ba71e4, reviewed: false
facts-pipe_slope-name = Mteremko wa bomba la gesi kuelekea mtego au mtambo
# of 3d62270e, reviewed: false
facts-untrapped_low_points-name = Sehemu za chini za bomba la gesi zisizo na mtego
# of d377b4dd, reviewed: false
facts-pipe_burial_depth-name = Kina cha bomba la gesi chini ya ardhi
# of 12e42054, reviewed: false
facts-gas_in_use-name = Gesi inachomwa
# of c342230f, reviewed: false
facts-slurry_removed_while_burning-name = Tope linatolewa wakati mwali unawaka
# of 5fdb3d78, reviewed: false
facts-flame_before_valve-name = Kiberiti kinawashwa kabla ya vali ya gesi kufunguliwa
# of dfb0f521, reviewed: false
facts-flame_colour-name = Mwali
# of 53da7d31, reviewed: false
facts-kitchen_openings-name = Matundu ya kudumu kwenye chumba chenye kifaa cha gesi
# of 044bff75, reviewed: false
facts-clearance_above_flame-name = Umbali juu ya mwali hadi kitu chochote kinachoweza kuungua
# of 239e0209, reviewed: false
facts-gas_vented_indoors-name = Gesi au maji ya mtego yanaachiliwa ndani ya chumba au kitalu nyumba
# of f8a018ad, reviewed: false
facts-days_without_gas_use-name = Muda bila kutumia gesi
# of 2aeb79e4, reviewed: false
facts-ignition_near_open_plant-name = Kuvuta sigara, simu, swichi au cheche ndani ya 5 m kutoka mtambo ulio wazi
# of e55403e5, reviewed: false
facts-gas_smell_indoors-name = Harufu ya gesi ndani ya nyumba
# of 3561a55b, reviewed: false
facts-gas_meter_used-name = Kipima gesi kilitumiwa kwenye hewa ya chumbani
# of 23af2097, reviewed: false
facts-methane_in_room_air-name = Methani kwenye hewa ya chumbani
# of dfd6d0b9, reviewed: false
facts-hydrogen_sulfide_in_breathed_air-name = Hidrojeni salfaidi kwenye hewa inayovutwa
# of 2a32309f, reviewed: false
facts-carbon_monoxide_in_room_air-name = Kaboni monoksaidi kwenye hewa ya chumbani
# of cb1327e6, reviewed: false
facts-unflued_water_heater_indoors-name = Hita ya maji isiyo na bomba la moshi inawaka ndani ya nyumba
# of cd399a12, reviewed: false
facts-unconverted_appliance-name = Kifaa cha gesi ya mtungi au gesi ya bomba ya mjini kinatumiwa bila kubadilishwa
# of d691650d, reviewed: false
facts-water_sufficiency-name = Maji yaliyopo kulinganisha na maji yanayohitajika
# of e34ed387, reviewed: false
facts-water_sufficiency-description = Maji yanayoweza kupatikana kwa siku yakigawanywa kwa maji ambayo malisho yanahitaji.
# of 41191520, reviewed: false
facts-recycled_liquid_share-name = Majimaji ya mlango wa kutolea yanayorudishwa, sehemu ya majimaji ya kuchanganyia
# of 5437b478, reviewed: false
facts-rain_enters_digester-name = Mvua au maji ya kusukumia yanaingia kwenye mlango wa kuingizia au wa kutolea
# of 9149e6f1, reviewed: false
facts-toilet_flush_volume-name = Maji ya kusukuma mara moja ya choo kilichounganishwa
# of be3180c7, reviewed: false
facts-slurry_total_solids-name = Yabisi jumla ya tope lililochanganywa
# of e7d1bdae, reviewed: false
facts-slurry_total_solids-description = Kama linavyolishwa, baada ya kuchanganywa na maji au mkojo.
# of aba153e9, reviewed: false
facts-feed_contains-name = Kinachopatikana kwenye malisho ya mtambo
# of 012a4b2a, reviewed: false
facts-feed_contains-description = Orodha tupu inasema kwamba mtu aliangalia na hakupata chochote kati ya hivyo.
# of 8eafbc21, reviewed: false
facts-feeding_interval-name = Muda kati ya ulishaji mmoja na mwingine
# of 2e61fe57, reviewed: false
facts-organic_loading_rate-name = Kiwango cha ulishaji
# of 44edcd8a, reviewed: false
facts-organic_loading_rate-description = Yabisi tete zinazolishwa kwa siku kwa kila mita ya ujazo ya tope lililo kwenye mtambo wa biogesi.
# of 4e47897d, reviewed: false
facts-carbon_to_nitrogen-name = Uwiano wa kaboni kwa nitrojeni wa malisho
# of cb2af9d1, reviewed: false
facts-total_ammonia_nitrogen-name = Nitrojeni ya amonia kwa jumla
# of 33e6a4fb, reviewed: false
facts-free_ammonia-name = Amonia huru
# of 3fd3eda5, reviewed: false
facts-slurry_ph-name = pH ya tope lililo kwenye mtambo wa biogesi
# of aac1ded5, reviewed: false
facts-heap_age-name = Umri wa kinyesi cha zamani zaidi kwenye lundo wakati wa kujaza
# of 8390042a, reviewed: false
facts-heap_covered-name = Lundo la kinyesi limefunikwa
# of 6671d625, reviewed: false
facts-starter_share-name = Tope la kuanzishia
# of 28a71546, reviewed: false
facts-starter_share-description = Sehemu ya ujazaji wa kwanza ambayo ni tope lililomeng'enywa kutoka mtambo unaofanya kazi.
# of 9ce7eea0, reviewed: false
facts-starts_unaided-name = Malisho yanaleta vijidudu vyake yenyewe
# of 0f8d0d48, reviewed: false
facts-starts_unaided-description = Ni ndiyo kwa kinyesi kibichi cha ng'ombe na nyati.
# of d6997ba8, reviewed: false
facts-fed_share_of_design-name = Malisho kulinganisha na malisho yaliyopangwa kwenye usanifu
# of e8f1bbb4, reviewed: false
facts-crop_residue_share-name = Mabaki ya mazao, sehemu ya yabisi jumla zinazolishwa
# of c0e3a075, reviewed: false
facts-poultry_share-name = Kinyesi cha kuku, sehemu ya uzito unaolishwa
# of f6e4893b, reviewed: false
facts-human_excreta_fed-name = Kinyesi cha binadamu kinalishwa
# of b4de3a9a, reviewed: false
facts-acid_feed_share-name = Matunda, maji ya jibini, saileji na mabaki ya chakula, sehemu ya yabisi tete zinazolishwa
# of 77c0fff5, reviewed: false
facts-particle_length-name = Urefu wa vipande virefu zaidi kwenye malisho
# of dac6dce0, reviewed: false
facts-animals_treated-name = Wanyama walitibiwa kwa antibayotiki au dawa ya minyoo katika mwezi uliopita
# of e499502b, reviewed: false
facts-days_since_medicine-name = Muda tangu matibabu ya mwisho
# of b9882e78, reviewed: false
facts-weekly_feed_increase-name = Ongezeko la malisho ya kila siku kwa wiki
# of 54dfa6f9, reviewed: false
facts-fed_before_gas_burns-name = Malisho yaliongezwa baada ya ujazaji wa kwanza kabla gesi haijawaka kwa utulivu
# of 7a66d594, reviewed: false
facts-foam_seen-name = Povu kwenye mlango wa kutolea au bomba la gesi
# of f6aa3087, reviewed: false
facts-stirs_per_day-name = Idadi ya kukoroga kwa siku
# of 8e367bcc, reviewed: false
facts-manure_from_restricted_zone-name = Samadi inatoka kwenye shamba la mifugo lililo ndani ya eneo lenye zuio la ugonjwa
# of 08fe7979, reviewed: false
facts-manure_from_other_farms-name = Samadi inatoka mashamba mengine
# of 54c48271, reviewed: false
facts-vehicles_cleaned-name = Magari na toroli husafishwa kati ya shamba moja la mifugo na jingine
# of 11a44cf8, reviewed: false
facts-entry_planned-name = Mtu fulani anapanga kuingia ndani ya mtambo wa biogesi au shimo
# of 97788bbd, reviewed: false
facts-entry_planned-description = Mtu yeyote, kwa sababu yoyote, ndani ya mtambo wa biogesi, shimo la mlango wa kutolea au shimo la tope.
# of 05e7a02d, reviewed: false
facts-entry_team_trained-name = Wanaoingia ni timu iliyofunzwa na yenye vifaa ya kufanya kazi katika maeneo yaliyofungwa
# of 22954933, reviewed: false
facts-ventilated_for-name = Muda ambao shimo lililomwagwa limekaa wazi na kupitishwa hewa
# of 4681cfad, reviewed: false
facts-oxygen_in_entry_air-name = Oksijeni kwenye hewa ya shimoni
# of 5b42cc19, reviewed: false
facts-methane_in_entry_air-name = Methani kwenye hewa ya shimoni
# of 384a55c4, reviewed: false
facts-hydrogen_sulfide_in_entry_air-name = Hidrojeni salfaidi kwenye hewa ya shimoni
# of e24b8d2e, reviewed: false
facts-harness_and_two_outside-name = Mkanda wa usalama wa mwili uliofungwa kamba inayoshikwa na watu wawili walio nje
# of d09b36a4, reviewed: false
facts-animal_test_relied_on-name = Hewa inapimwa kwa kushusha mnyama mdogo
# of 60163b78, reviewed: false
facts-people_or_animals_over_stirred_store-name = Watu au wanyama wako ndani ya jengo wakati hifadhi ya tope iliyo chini yake inakorogwa au kumwagwa
# of 3d47147f, reviewed: false
facts-head_below_rim-name = Mtu fulani anainamisha kichwa chini ya ukingo wa mtambo ulio wazi
# of 4c64f2a1, reviewed: false
facts-household_knows_no_rescue-name = Kila mtu anajua kwamba hapaswi kumfuata mtu anayeanguka au kuzimia shimoni
# of e0a16b9f, reviewed: false
facts-users_trained-name = Watumiaji walionyeshwa jinsi ya kuendesha mtambo
# of 8f51aa75, reviewed: false
facts-load_carried-name = Mzigo mzito zaidi unaobebwa na mtu mmoja
# of f6368198, reviewed: false
facts-twisting_when_lifting-name = Mgongo unazungushwa ukiwa na mzigo
# of 93d52d77, reviewed: false
facts-carry_distance-name = Umbali ambao mizigo inabebwa bila kupumzika
# of 72066055, reviewed: false
facts-children_carry_loads-name = Watoto wanabeba kinyesi au maji ya mtambo
# of e13933fa, reviewed: false
facts-daily_mass_per_person-name = Uzito ambao mtu mmoja anahamisha kwa siku
# of 546282ae, reviewed: false
facts-wet_bulb_globe_temperature-name = Kipimo cha joto cha balbu nyevu na tufe (WBGT) wakati wa kazi nzito
# of 6699d465, reviewed: false
facts-hand_washing-name = Mikono hunawiwa kwa sabuni baada ya kulisha mtambo na kufanya kazi ya tope
# of 2766cc3c, reviewed: false
facts-protective_clothing-name = Glavu na buti huvaliwa na vidonda hufunikwa
# of 794ef391, reviewed: false
facts-vulnerable_people_handle_slurry-name = Wanawake wajawazito, watoto wadogo au wagonjwa wanashika kinyesi au tope
# of a0f0a543, reviewed: false
facts-digestate_on_raw_crops-name = Tope linawekwa kwenye mazao yanayoliwa mabichi
# of 25e9fe23, reviewed: false
facts-edible_part_touches_soil-name = Sehemu inayoliwa inagusa udongo
# of bc7aa4d3, reviewed: false
facts-days_to_harvest-name = Muda kutoka kuweka tope la mwisho hadi kuvuna
# of e0056d66, reviewed: false
facts-digestate_stored_for-name = Muda wa kuhifadhi tope kabla ya kulitumia
# of 874a5b28, reviewed: false
facts-digestate_sprayed-name = Tope linanyunyizwa
# of e2dcaea2, reviewed: false
facts-lime_only_treatment-name = Chokaa peke yake inategemewa kuua mayai ya minyoo
# of d92fb1f6, reviewed: false
facts-sludge_stored_or_composted-name = Mashapo ya chini yanahifadhiwa au kufanywa mboji kabla ya kutumiwa
# of 9ed0e2cb, reviewed: false
facts-stockpile_sufficiency-name = Kinyesi kilicho kwenye lundo kulinganisha na kinyesi kinachohitajika
# of 240f98a9, reviewed: false
facts-stockpile_sufficiency-description = Siku ya kujaza, kilichokusanywa na kaya yenyewe tu.
# of 839e0beb, reviewed: false
facts-seal_margin-name = Ujazo wa kwanza kulinganisha na ule mdogo kabisa unaoziba milango ya kuingizia na kutolea
# of d704803a, reviewed: false
facts-fill_margin-name = Ujazo wa kwanza kulinganisha na ule mkubwa kabisa ambao mtambo unaweza kuchukua
# of 21e9dfa4, reviewed: false
facts-water_days-name = Siku za kukusanya maji ya ujazaji wa kwanza
# of 9087aaa3, reviewed: false
facts-total_volume-name = Ujazo wote wa mtambo wa biogesi
# of 8f8ad428, reviewed: false
facts-total_volume-description = Tope na nafasi ya gesi kwa pamoja.
# of d366937a, reviewed: false
facts-supply_sufficiency-name = Kinachotolewa na mifugo kulinganisha na kinacholishwa
# of 6eb8f575, reviewed: false
facts-feed_sufficiency-name = Gesi ya malisho yaliyopo kulinganisha na gesi inayotakiwa
# of 13482b99, reviewed: false
facts-feed_sufficiency-description = Ya kile wanyama wanachotoa, au ya malisho kama yalivyotajwa, katika mtambo wa biogesi unaotosha kuyapokea yote.
# of 65d7e0f0, reviewed: false
facts-dose_share-name = Tope la ulishaji mmoja kulinganisha na ujazo wa kazi
# of c4b48dab, reviewed: false
facts-rotation_sufficiency-name = Gesi isiyobadilikabadilika ya mitambo ya kujazwa mara moja kwa zamu kulinganisha na mahitaji
# of 0bf0955c, reviewed: false
facts-rotation_sufficiency-description = Ya zamu iliyotajwa, au ya ile kubwa zaidi pale ambapo hakuna inayotosheleza mahitaji.
# of 7ce50edf, reviewed: false
facts-charge_start_reliability-name = Ujazaji unaofikia kutoa gesi inayowaka
# of 7fb095e1, reviewed: false
facts-charge_start_reliability-description = Sehemu ya ujazaji unaowezekana wa malisho haya, uzimuaji, tope la kuanzishia na joto, kwa mujibu wa modeli ya mchakato.
# of fada7abd, reviewed: false
facts-full_gas_pressure_margin-name = Presha ya nafasi ya gesi iliyojaa kulinganisha na kile ambacho mtambo unahimili
# of e8183de3, reviewed: false
facts-full_gas_pressure_margin-description = Presha ya geji tope likiwa mahali pa kufurikia, kugawanya kwa presha ya juu kabisa ya kazi ya aina hii ya mtambo.
# of 455938f7, reviewed: false
facts-coldest_month_air_temperature-name = Joto la hewa katika mwezi wa baridi zaidi
# of b96b607e, reviewed: false
facts-coldest_month_air_temperature-description = Wastani wa mwezi, mchana na usiku.
# of 7d49aff9, reviewed: false
facts-coldest_slurry_temperature-name = Joto la tope katika mwezi wa baridi zaidi
# of 09df1094, reviewed: false
facts-warmest_slurry_temperature-name = Joto la tope katika mwezi wa joto zaidi
# of 293f9c5c, reviewed: false
facts-cold_season_gas_share-name = Gesi ya mwezi wa baridi zaidi kulinganisha na wastani wa mwaka
# of e969d0af, reviewed: false
facts-cold_season_gas_share-description = Kwa malisho yale yale; wastani wa mwaka ni ule wa joto lake la wastani.
# of 7b8441d0, reviewed: false
facts-digestate_on_fodder-name = Tope linawekwa kwenye majani ya mifugo au machungio
# of 41262265, reviewed: false
facts-nitrogen_per_area-name = Nitrojeni ya samadi kwenye shamba linalopata nyingi zaidi
# of e11be87a, reviewed: false
facts-nitrogen_per_area-description = Jumla ya nitrojeni kwa mwaka, kutoka kinyesi na tope lote, kama inavyofikishwa shambani.
# of e26ebce6, reviewed: false
facts-slurry_store_sufficiency-name = Hifadhi ya tope kulinganisha na tope linalokusanyika kati ya usambazaji mmoja na mwingine
# of d23db8a2, reviewed: false
facts-acid_ratio_forecast-name = Uwiano mkubwa kabisa unaotabiriwa wa asidi tete kwa ualkali
# of 81353237, reviewed: false
facts-acid_ratio_forecast-description = Wa mtambo wa kawaida wa biogesi baada ya mwezi wake wa kwanza; ni utabiri na si kipimo.
# of 207814f7, reviewed: false
facts-longest_feeding_gap-name = Kipindi kirefu zaidi kisicho na mpango wowote wa ulishaji
# of 8138a6e0, reviewed: false
facts-gas_ratio-name = Gesi iliyopimwa kulinganisha na gesi inayotarajiwa kutokana na malisho
# of 2955b37c, reviewed: false
facts-gas_ratio-description = Kulinganisha na kiasi cha kawaida cha kile ambacho malisho haya hutoa kwenye mtambo huu wa biogesi kwa joto lake.
# of 6dce636b, reviewed: false
facts-gas_ratio_to_low-name = Gesi iliyopimwa kulinganisha na kiasi kidogo kabisa kinachotarajiwa kutokana na malisho
# of a7b8fdd1, reviewed: false
facts-gas_ratio_to_low-description = Chini ya 1 gesi ni kidogo kuliko ile ambayo mashamba kumi na tisa kati ya ishirini ya aina hii yangekuwa nayo.
# of a2ca34b8, reviewed: false
facts-methane_in_gas-name = Methani kwenye biogesi
# of ae50fed1, reviewed: false
facts-methane_in_gas-description = Kwa ujazo, ya gesi kama inavyotoka kwenye mtambo wa biogesi.
# of 83eb4b18, reviewed: false
facts-volatile_acids_to_alkalinity-name = Asidi tete kulinganisha na ualkali wa tope
# of 71820242, reviewed: false
facts-volatile_acids_to_alkalinity-description = Vyote kwa kizio kimoja, kama vilivyopimwa.
# of cb4431b4, reviewed: false
facts-days_since_feeding-name = Muda tangu ulishaji wa mwisho
# of 36dce85f, reviewed: false
facts-digester_age-name = Muda tangu mtambo wa biogesi ulipojazwa kwa mara ya kwanza
# of bb580a91, reviewed: false
facts-total_volume_to_smallest-name = Ujazo wote ukilinganishwa na mdogo kabisa unaojengwa wa aina hii
# of c7dcc51b, reviewed: false
facts-total_volume_to_largest-name = Ujazo wote ukilinganishwa na mkubwa kabisa unaojengwa wa aina hii
# of 813f3d2b, reviewed: false
facts-gas_storage_to_usual-name = Hifadhi ya gesi ikilinganishwa na ya kawaida kwa ujazo wote
# of c785d217, reviewed: false
facts-herd_to_largest_herd-name = Kinyesi cha kundi kikilinganishwa na kingi kabisa ambacho mtambo unapokea
# of 1041db11, reviewed: false
facts-herd_to_largest_herd-description = Kwa maji ya kawaida, kwa muda mfupi kabisa wa kukaa ambao ni wa kawaida kwa joto lake.
# of 40970afc, reviewed: false
facts-herd_to_smallest_herd-name = Kinyesi cha kundi kikilinganishwa na kidogo kabisa kinachojaza mtambo
# of 25ec9f4a, reviewed: false
facts-herd_to_smallest_herd-description = Kwa maji ya kawaida, kwa muda mrefu kabisa wa kukaa ambao ni wa kawaida kwa joto lake.
# of 9f25cf16, reviewed: false
facts-mean_air_temperature-name = Hewa, wastani wa mwaka
# of 496ace8e, reviewed: false
facts-feed_to_herd_most-name = Malisho yakilinganishwa na mengi kabisa ambayo kundi linaweza kutoa
# of 2533fa83, reviewed: false
facts-water_to_wettest-name = Maji ya kuchanganyia yakilinganishwa na mengi kabisa ambayo malisho haya hupunguzwa nayo
# of bfcac76f, reviewed: false
facts-gas_ratio_to_high-name = Gesi iliyopimwa ikilinganishwa na nyingi kabisa inayotarajiwa kwa malisho
# of f3a523ae, reviewed: false
facts-gas_pressure_to_highest-name = Presha ya gesi ikilinganishwa na ya juu kabisa inayotumika kwa mtambo wa aina hii
# of 98262224, reviewed: false
facts-gas_is_measured-name = Gesi ya siku ilipimwa
# of 7ad14ada, reviewed: false
facts-age_at_visit-name = Muda kuanzia mtambo kuanza kazi hadi ziara
# of 983d2788, reviewed: false
facts-age_over_retention-name = Umri wa mtambo ukilinganishwa na muda wa kukaa uliopangwa
# of 535e0a69, reviewed: false
facts-methane_loss_over_saving-name = Ongezeko la joto kutokana na methani inayopotea likilinganishwa na kinachookolewa
