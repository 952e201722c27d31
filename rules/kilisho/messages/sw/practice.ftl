# of 71244562, reviewed: false
practice-containers-bucket-name = Ndoo ya lita 20
# of 5e283b5b, reviewed: false
practice-containers-small_bucket-name = Ndoo ya lita 10
# of c24cff0a, reviewed: false
practice-containers-jerrycan-name = Dumu
# of 608dbb26, reviewed: false
practice-containers-basket-name = Kikapu cha kubebwa kichwani
# of 976ccd9c, reviewed: false
practice-containers-wheelbarrow-name = Toroli
# of 8e193256, reviewed: false
practice-containers-drum-name = Pipa la mafuta
# of e63a774a, reviewed: false
practice-containers-hand_cart-name = Mkokoteni wa kusukumwa kwa mkono
# of 54c1c88f, reviewed: false
practice-containers-donkey_panniers-name = Jozi ya matandu ya punda
# of 283cddc3, reviewed: false
practice-containers-ox_cart-name = Mkokoteni wa ng'ombe
# of 5afd8218, reviewed: false
practice-containers-pickup-name = Gari la pikapu lililojazwa hadi usawa wa kingo
# of 974e01cc, reviewed: false
practice-covers-uncovered-name = Lundo lililo wazi
# of 5dfffbe4, reviewed: false
practice-covers-roof-name = Chini ya paa
# of dcc04afd, reviewed: false
practice-covers-sheet-name = Lililoshindiliwa, kivulini na chini ya turubai
# of 2a077780, reviewed: false
practice-covers-pit-name = Shimo lililofunikwa
# of 68d995df, reviewed: false
practice-slurry_stores-open_pit-name = Shimo au tanki lililo wazi
# of bd45232c, reviewed: false
practice-slurry_stores-covered_pit-name = Shimo au tanki lenye mfuniko, turubai au tabaka gumu nene la juu
# of dd884a92, reviewed: false
practice-spreadings-broadcast-name = Linamiminwa au kutupwa juu ya ardhi
# of 3a9b3a81, reviewed: false
practice-spreadings-covered_furrow-name = Linamiminwa kwenye mifereji au mashimo na kufunikwa kwa udongo papo hapo
# of 266d356d, reviewed: false
practice-spreadings-irrigation_water-name = Linapitishwa kwenye mifereji pamoja na maji ya umwagiliaji
# of 76e87253, reviewed: false
practice-manure_managements-solid_storage-name = Rundo la samadi ngumu, linalokaa kwa miezi
# of a397391d, reviewed: false
practice-manure_managements-dry_lot-name = Inaachwa kwenye zizi lenye sakafu ya udongo na kutolewa mara kwa mara
# of dd5fdee4, reviewed: false
practice-manure_managements-daily_spread-name = Inapelekwa shambani ndani ya siku moja
# of 82d117b6, reviewed: false
practice-manure_managements-pasture-name = Inaachwa mahali wanyama wanapochunga
# of 0a36c8fa, reviewed: false
practice-manure_managements-burned_as_fuel-name = Inakaushwa na kuchomwa
# of 4df57d2a, reviewed: false
practice-manure_managements-deep_bedding-name = Inakanyagwa kwenye matandazo yanayokaa zaidi ya mwezi mmoja
# of c4b57d7e, reviewed: false
practice-manure_managements-liquid_slurry-name = Tope kwenye shimo au tanki linalomwagwa mara mbili kwa mwaka
# of 89a1f42a, reviewed: false
practice-manure_managements-pit_storage-name = Tope kwenye shimo chini ya wanyama linalomwagwa kila mwezi
# of 3c500efd, reviewed: false
practice-measurements-phosphorus-text = Maabara ya udongo au ya malisho hupima fosforasi ya sampuli iliyokaushwa; uliza kama inataja P au P2O5.
# of 0dfc0597, reviewed: false
practice-measurements-potassium-text = Maabara ya udongo au ya malisho hupima potasiamu ya sampuli iliyokaushwa; uliza kama inataja K au K2O.
# of cde72637, reviewed: false
practice-measurements-nitrogen_need-text = Uliza ofisi ya ugani au maabara ya udongo nitrojeni ambayo zao hili linahitaji hapa kwa mavuno yako, na uitaje.
# of 3fb6744f, reviewed: false
practice-measurements-total_solids-text = Pima uzito wa karibu 200 g za malisho mabichi, yakaushe kwa matabaka membamba kwenye tanuri kwa karibu 105 °C (au juani kwa siku kadhaa za jua) hadi yasipungue uzito tena, kisha pima tena; sehemu inayobaki ni yabisi jumla. Sampuli tatu za siku tofauti.
# of 50869e23, reviewed: false
practice-measurements-volatile_solids_share-text = Maabara huchoma sampuli iliyokaushwa kwa 550 °C: kinachoungua na kutoweka ni yabisi tete. Kama hakuna maabara, angalia kama kuna udongo na mchanga kwenye kinyesi, ambavyo huzipunguza.
# of 1e831f39, reviewed: false
practice-measurements-bulk_density-text = Pima uzito wa ndoo ikiwa tupu, ikiwa imejaa maji na ikiwa imejaa malisho kama yanavyobebwa; malisho kugawanya kwa maji, vyote bila uzito wa ndoo, ni msongamano wake kwa kilogramu kwa lita.
# of 56562efd, reviewed: false
practice-measurements-dung_per_day-text = Kusanya na pima uzito wa kinyesi chote cha wanyama kwa mchana mzima na usiku mzima, kwa siku tatu, na gawanya kwa idadi ya wanyama.
# of 56562efd, reviewed: false
practice-measurements-dung_per_live_weight-text = Kusanya na pima uzito wa kinyesi chote cha wanyama kwa mchana mzima na usiku mzima, kwa siku tatu, na gawanya kwa idadi ya wanyama.
# of 4563bb09, reviewed: false
practice-measurements-collectable_share_stall-text = Pima uzito wa kile kinachokusanywa kweli kwa siku badala ya kile kinachoanguka.
# of bf902f20, reviewed: false
practice-measurements-collectable_share_night_pen-text = Pima uzito wa kilichopo zizini kila asubuhi kwa siku tatu.
# of 7b531432, reviewed: false
practice-measurements-collectable_share_grazing-text = Pima uzito wa kile kinacholetwa nyumbani kweli kwa siku.
# of c5d7da05, reviewed: false
practice-measurements-urine_per_day-text = Pima kinachotiririkia kwenye shimo la mkojo kwa siku, kwa siku tatu zisizo na mvua.
# of dd9160bd, reviewed: false
practice-measurements-fill_share-text = Chukua ujazo wa tope kwenye kina cha kawaida kutoka mchoro wa mjenzi, au pima kina na vipimo vya ndani kabla ya kujaza, ukiwa nje na kamwe si kwa kuingia ndani ya mtambo wa biogesi uliotumika.
# of e288a8c1, reviewed: false
practice-measurements-gas_storage_share-text = Chukua ujazo wa hifadhi ya gesi kutoka mchoro wa mjenzi; kwenye kuba ni tanki la kusawazisha kati ya kina cha chini kabisa na kina cha kufurikia.
# of 10a8b201, reviewed: false
practice-measurements-digester_temperature-text = Tundika kipimajoto ndani ya tope lililochotwa sasa hivi kwenye mlango wa kutolea, kila wiki katika msimu wa baridi na wa joto.
# of e3c8c16e, reviewed: false
practice-measurements-soil_offset-text = Pima joto la tope kwenye mlango wa kutolea, kila wiki katika msimu wa baridi na wa joto.
# of be8d4d3c, reviewed: false
practice-measurements-yearly_swing-text = Uliza kituo cha hali ya hewa kilicho karibu zaidi wastani wa joto la hewa wa kila mwezi kwa miezi kumi na miwili.
# of 60c8c09b, reviewed: false
practice-measurements-soil_depth-text = Chukua kina cha katikati ya tope chini ya ardhi kutoka mchoro au kwa kijiti cha kupimia kwenye mlango wa kutolea; kitaje kama kina cha mtambo wa biogesi.
# of 54e956c0, reviewed: false
practice-measurements-biogas_yield-text = Agiza jaribio la kujaza mara moja lifanywe, au soma mita ya gesi kila siku kwa mwezi mmoja wa ulishaji wa kiasi sawa na gawanya kwa yabisi tete zilizolishwa.
# of 12ab9a6d, reviewed: false
practice-measurements-methane_share-text = Gesi ipimwe kwa kichanganuzi cha kubebeka nje ya nyumba kwenye kichomeo, na mtu aliyefunzwa.
# of a4c82ce0, reviewed: false
practice-measurements-nitrogen_share-text = Maabara ya udongo au ya malisho hupima nitrojeni yote ya sampuli iliyokaushwa.
# of 4c8c60db, reviewed: false
practice-measurements-ammonium_share-text = Maabara hupima amoniamu na nitrojeni yote ya tope bichi lililomeng'enywa.
# of 15313d7f, reviewed: false
practice-measurements-carbon_to_nitrogen_of_feed-text = Maabara ya udongo au ya malisho hupima kaboni na nitrojeni ya sampuli iliyokaushwa.
# of 124c2e50, reviewed: false
practice-measurements-slurry_ph-text = Chovya karatasi ya pH au kipimo cha pH kwenye tope bichi la mlango wa kutolea, mara tu linapochotwa.
# of 27d4fc95, reviewed: false
practice-measurements-settling_share-text = Acha ndoo ya malisho yaliyochanganywa isimame kwa robo saa, mwaga majimaji ya juu, kausha na pima uzito wa mchanga, na linganisha na majivu ya malisho.
# of ed7cc696, reviewed: false
practice-measurements-gas_per_hour-text = Soma mita ya gesi kabla na baada ya saa moja ya kuwaka pasipo na kingine kilichowashwa, kwa siku tatu; kama hakuna mita, angalia pipa la gesi linashuka kiasi gani kwa saa hiyo.
# of be4e6038, reviewed: false
practice-measurements-gas_per_person-text = Soma mita ya gesi, au hesabu saa za kila kichomeo, kwa wiki moja ya kupika kwa kawaida, na gawanya kwa idadi ya watu na ya siku.
# of 5d84f3c6, reviewed: false
practice-measurements-biogas_stove_efficiency-text = Pasha joto sufuria ya maji iliyopimwa uzito kwa 50 K kwa gesi iliyopimwa kwa mita: 4.19 kJ kwa kilogramu na kelvini kugawanya kwa joto la gesi.
# of 9a29e7f2, reviewed: false
practice-measurements-fuel_stove_efficiency-text = Pima uzito wa nishati ambayo kaya inachoma kwa wiki moja ya kupika kwa kawaida kabla ya kuwa na gesi; hiyo ni bora kuliko kiwango chochote cha ufanisi.
# of ebd62497, reviewed: false
practice-measurements-leak_share-text = Funga vali jioni na soma presha asubuhi joto likiwa lile lile; maji ya sabuni kwenye kila ungio yanaonyesha inakotokea.
# of d2e21774, reviewed: false
practice-measurements-walking_speed-text = Pima muda wa safari moja ya kwenda na kurudi na mzigo kutoka lundo hadi mtambo wa biogesi.
# of fba548c5, reviewed: false
practice-measurements-mixing_rate-text = Pima muda wa kuchanganya ndoo kumi za kwanza.
