# of 48724341, reviewed: false
cautions-local_codes-text = Ushauri huu hauchukui nafasi ya sheria wala ya mtu mwenye leseni. Pale ambapo kanuni za mahali hapo, mamlaka ya afya, ya maji au ya afya ya mifugo, au mhandisi, fundi mwashi au fundi wa gesi mwenye leseni anataka zaidi, fanya anachotaka.
# of caac8aa5, reviewed: false
cautions-never_enter-text = Usiingie kamwe wala usiinamie kamwe ndani ya mtambo wa biogesi, shimo la mlango wa kutolea au shimo la tope, hata kama ni tupu. Gesi huua ndani ya pumzi chache na pua haitoi onyo lolote. Fanya kazi ukiwa nje kwa zana ndefu; kazi ya kuingia iachie timu iliyofunzwa na yenye vifaa.
# of 570155a3, reviewed: false
cautions-structure_by_licensed-text = Vipimo hivi ni vya kupanga tu. Ujenzi wenyewe, msingi wake na nondo zake ni kazi ya mhandisi mwenye leseni au ya fundi mwashi aliyefunzwa mwenye mchoro uliothibitishwa, na lazima ufuate kanuni za ujenzi za mahali hapo.
# of fd06b2ed, reviewed: false
cautions-excavation_collapse-text = Kuta za shimo zinaweza kuanguka bila onyo na kufukia watu. Zichimbe kwa mteremko au zitegemeze, weka udongo uliochimbwa, magari na watazamaji mbali na ukingo, weka ngazi shimoni, na mwache mjenzi aliyefunzwa apime hali ya ardhi; kwanza tafuta mabomba na nyaya zilizofukiwa.
# of 1e508ae0, reviewed: false
cautions-open_pit_children-text = Zungushia uzio shimo lililo wazi na lifunike usiku, ili mtoto au mnyama yeyote asitumbukie wakati unajenga.
# of 2d49f6a5, reviewed: false
cautions-fill_after_curing_and_tests-text = Usijaze mtambo hadi ujenzi wa uashi uwe umekomaa, udongo uwe umerudishwa kuuzunguka, na mtambo wa biogesi uwe umefaulu majaribio ya kutovuja maji na kutovuja gesi. Uvujaji ulio chini ya tope hauwezi kufikiwa.
# of 74dc81f5, reviewed: false
cautions-first_gas-text = Gesi ya kwanza imechanganyika na hewa na inaweza kulipuka. Iachilie nje ya nyumba bila kuichoma, mbali na mwali wowote wa moto, mara moja au mbili pale geji inapofika kwa mara ya kwanza karibu 4 kPa (40 cm za maji); mfuko hufanya kazi kwa presha ndogo zaidi, hivyo achilia gesi yake inayoujaza kwa mara ya kwanza.
# of 85500e54, reviewed: false
cautions-first_flame-text = Jaribu mwali wa kwanza kwenye jiko lililo mwishoni mwa bomba, nje ya nyumba, angalau 10 m kutoka mtambo wa biogesi. Usipeleke kamwe mwali kwenye mtambo wa biogesi, bomba lake, mlango wake wa kuingizia au mlango wake wa kutolea.
# of 658ec61d, reviewed: false
cautions-loads-text = Ujazaji wa kwanza ni tani kadhaa za kinyesi na maji. Ndoo ziwe chini ya 20 kg, tumia toroli, inua mizigo mgongo ukiwa umenyooka, pokezaneni, pumzika na kunywa maji; watoto na wanawake wajawazito hawabebi.
# of 2d2d48df, reviewed: false
cautions-no_flame_no_smoking-text = Ni marufuku kuwa na mwali wa moto, kuvuta sigara au kutoa cheche ndani ya 5 m kutoka mtambo wa biogesi, chombo cha gesi, mlango wa kuingizia au mlango wa kutolea.
# of c8673b32, reviewed: false
cautions-hygiene-text = Kinyesi na tope hubeba vimelea vya magonjwa na mayai ya minyoo. Vaa glavu na buti, funika vidonda, nawa mikono kwa sabuni kabla ya kula, na usiruhusu watoto wadogo wala wanawake wajawazito kuvishika.
# of 46494f37, reviewed: false
cautions-keep_openings_covered-text = Funga mifuniko ya mlango wa kuingizia na wa kutolea kila baada ya kulisha mtambo. Watu, hasa watoto, na wanyama wamekufa kwenye mashimo yaliyo wazi.
# of 2129f855, reviewed: false
cautions-antibiotics_disinfectants-text = Zuia kinyesi cha wanyama wanaopewa dawa, na maji ya kuoshea yenye dawa ya kuua vimelea, dawa ya kuogesha mifugo au sabuni, visiingie kwenye mtambo wa biogesi: husimamisha kazi ya vijidudu. Kinyesi hicho kifanye mboji, na subiri wiki moja au zaidi baada ya dawa ya mwisho.
# of 1d117ed5, reviewed: false
cautions-gas_line_by_licensed-text = Mabomba, vali na vifaa vya gesi ni kazi ya fundi wa gesi aliyefunzwa, na lazima vifuate kanuni za mahali hapo. Bomba gumu hadi kwenye chumba, mpira wa gesi kwa mita ya mwisho tu, vali moja kwenye mtambo na moja kwa kila kifaa, mteremko kuelekea mtego wa maji, kizuia mwali kabla ya kichomeo, na jaribio la maji ya sabuni kabla ya matumizi.
# of 94ae078e, reviewed: false
cautions-flame_gone_out-text = Mwali ukizimika kwa kukosa gesi, funga koki mara moja: gesi inayokuja baadaye hutiririka chumbani bila kuungua. Washa kiberiti kwanza kisha fungua koki, na funga vali kuu usiku.
# of 2a1a2814, reviewed: false
cautions-gas_pressure_limits-text = Usiongeze presha ili kupata mwali mzuri zaidi kupita kiwango ambacho mtambo na kifaa vimetengenezewa, na usiiache kamwe ishuke hadi sifuri wakati mwali unawaka. Kifaa cha gesi ya mtungi au gesi ya bomba ya mjini kinahitaji nozeli nyingine kabla ya kuruhusiwa kuchoma biogesi.
# of 17c2bdf1, reviewed: false
cautions-digestate_not_sanitised-text = Mtambo wa biogesi wa kaya haulifanyi tope kuwa salama. Hata kwenye 35 °C ni karibu 40 % tu ya mayai ya minyoo ya duara yaliyokuwa yamekufa baada ya siku 15 na 73 % baada ya siku 45, na mitambo mingi ina ubaridi zaidi ya hapo. Zingatia muda wa kusubiri, na usimwahidi mtu yeyote kwamba tope lililomeng'enywa ni safi.
# of 7c800b0e, reviewed: false
cautions-slurry_store_drowning-text = Watu, hasa watoto, na wanyama huzama kwenye hifadhi za tope, na tabaka gumu la juu huonekana kama ardhi imara. Funika hifadhi au izungushie uzio ili mtoto yeyote asiingie, weka ngazi au kamba hapo, na usiikoroge wala kuimwaga kamwe ukiwa umeinama juu yake.
# of 51f01581, reviewed: false
cautions-slurry_off_water-text = Zuia tope lisifike kwenye visima, vijito, miteremko isiyo na mimea na udongo uliojaa maji, na usilisambaze kabla ya mvua kubwa: huua samaki kwa sumu na huchafua maji ya kunywa kwa sumu. Kanuni za umbali, misimu na viwango ni za mahali hapo; zifuate kwanza.
# of 44a38d6d, reviewed: false
cautions-salt_and_scorch-text = Tope bichi huunguza miche na majani. Lizimue kwa maji au liweke kwenye udongo ulio kando yake, na lijaribu kwanza kwenye mimea michache.
# of 8bd8d8d2, reviewed: false
cautions-collapse_in_pit-text = Mtu akianguka au kuzimia shimoni, usimfuate. Mara moja ita waokoaji waliofunzwa, zuia wengine wasikaribie, puliza hewa safi ndani, na mvute kwa kamba kama amefungwa. Wengi wa waliokufa mashimoni waliingia kusaidia.
# of 8974b746, reviewed: false
cautions-gas_smell-text = Ukisikia harufu ya gesi ndani ya nyumba: zima miali ya moto, usiguse swichi yoyote, fungua milango na madirisha, toa watu wote nje, funga vali iliyo kwenye mtambo. Tafuta uvujaji kwa maji ya sabuni tu. Pua huacha kuitambua gesi baada ya muda mfupi.
# of 944d25e0, reviewed: false
cautions-carbon_monoxide-text = Mwali wa njano au wenye masizi hutoa kaboni monoksaidi, ambayo huua bila harufu. Acha matundu ya hewa yakiwa wazi, safisha kichomeo, na usitumie kamwe hita isiyo na bomba la moshi ndani ya nyumba.
# of c01813fc, reviewed: false
cautions-emptying_suction-text = Usitoe tope lolote wakati mwali unawaka. Kwanza funga vali kuu, zima miali yote ya moto na fungua tundu la kutolea gesi, la sivyo hewa hufyonzwa ndani na gesi hugeuka kuwa ya kulipuka.
# of 19aeeb20, reviewed: false
cautions-not_a_certificate-text = Ukaguzi wa kwenye karatasi si cheti cha mtambo. Chochote ambacho hakikutajwa hakijulikani na si salama, na vipimo vya gesi shimoni ni sahihi kwa wakati ule ule wa kupima tu.
# of 5a8360bc, reviewed: false
cautions-engine_exhaust-text = Injini inayotumia biogesi hutoa kaboni monoksaidi. Iendeshe nje ya nyumba au moshi wake uelekezwe nje, kamwe isiwe ndani ya nyumba au banda la mifugo; weka watu mbali na mkanda wake na sehemu zake za moto, na hakikisha hidrojeni salfaidi inaondolewa kwenye gesi kabla haijafika kwenye injini.
# of 6e14b9bf, reviewed: false
cautions-unattended_flame-text = Mwali unaowaka kwa saa nyingi bila mtu karibu unahitaji vali ya usalama inayofunga gesi mwali unapozimika, chumba kinachopitisha hewa vizuri, na kusiwe na kitu chochote kinachoweza kuungua karibu nao.
# of 335554df, reviewed: false
cautions-lamp_heat_and_mantle-text = Taa ya gesi ni ya moto: itundike mahali ambapo watoto hawafikii na mita moja chini ya kitu chochote kinachoweza kuungua. Nyavu za taa (mantili) za zamani zina thoriamu; usivute vumbi lake, na nawa mikono.
# of 50b12f57, reviewed: false
cautions-out_into_fresh_air-text = Mara moja toa watu wote nje kwenye hewa safi, zima mwali kama hilo halichukui muda, funga vali iliyo kwenye mtambo ukiwa nje, na ita msaada wa kitabibu. Mtu yeyote asirudi ndani kabla chumba hakijapitishwa hewa kwa muda mrefu. Usiingie shimoni kumfuata mtu yeyote.
# of 2c9f6142, reviewed: false
cautions-gas_fire-text = Waondoe watu wote hapo na ita zimamoto. Funga vali iliyo kwenye mtambo kama inaweza kufikiwa kwa usalama. Acha gesi inayowaka iendelee kuwaka hadi chanzo chake kifungwe: gesi inayotoka bila kuungua inaweza kulipuka. Ukiwa mbali, poza kwa maji vitu vilivyo karibu na moto.
# of 328c62b8, reviewed: false
cautions-over_pressure-text = Weka kila mtu mbali na mfuko, mfuniko na kuba, na hakikisha miali yote ya moto na cheche viko angalau 10 m kutoka hapo. Achilia gesi nje ya nyumba kupitia kipunguza presha au vali ya mtambo, acha kulisha mtambo, na usilegeze wala kutoboa kitu chochote kilicho chini ya presha. Mwite fundi mwashi.
# of 385837a6, reviewed: false
cautions-air_in_gas-text = Gesi iliyochanganyika na hewa inaweza kulipuka ndani ya bomba na ndani ya mtambo wa biogesi. Zima miali yote ya moto, funga vali ya mtambo, na usiwashe chochote hadi nafasi ya gesi ijae upya na gesi hiyo iachiliwe nje ya nyumba bila kuchomwa.
# of 8c77c95b, reviewed: false
cautions-hydrogen_sulfide_air-text = Hidrojeni salfaidi hunuka kama mayai yaliyooza mwanzoni kisha hufifisha pua: harufu inayotoweka ghafla si dalili nzuri. Nenda kwenye hewa safi ukielekea upepo unakotoka, pitisha hewa vyumbani, kaa mbali na mashimo na mahali pa chini, na usinuse gesi ili kuipima.
# of 918faf75, reviewed: false
cautions-pathogens_human-text = Kinyesi cha binadamu hubeba vimelea vya magonjwa na mayai ya minyoo, navyo hupita kwenye mtambo wa biogesi na kutoka. Acha choo kitiririshe moja kwa moja ndani ili mtu yeyote asishike kinyesi hicho, hifadhi tope kabla ya kulitumia, na usiliweke kamwe kwenye mazao yanayoliwa mabichi.
# of 72abe67d, reviewed: false
cautions-pathogens_manure-text = Kinyesi cha wanyama hubeba vimelea vinavyowaletea watu magonjwa. Vaa glavu na buti, nawa mikono kwa sabuni, na usiweke tope kwenye mazao yanayoliwa mabichi.
# of 89d984ac, reviewed: false
cautions-ammonia_feed-text = Malisho haya yana nitrojeni nyingi na amonia yake inaweza kusimamisha gesi; ndani ya mabanda yaliyofungwa amonia pia hudhuru macho na mapafu. Zimua vizuri, changanya na kinyesi cha ng'ombe, na ongeza sehemu yake polepole.
# of 41a185a2, reviewed: false
cautions-acid_feed-text = Malisho haya huchacha haraka. Anza na kidogo, yachanganye na kinyesi, na acha kuyatumia tope linaponuka uchachu au pH inaposhuka chini ya 6.8.
# of 08d2fb02, reviewed: false
cautions-floating_feed-text = Malisho haya huelea na kufanya tabaka gumu la juu. Yakate vipande vifupi au yaache yaoze kwanza, koroga kila siku, na vunja tabaka hilo ukiwa nje tu.
# of f0331dd7, reviewed: false
cautions-grit_feed-text = Malisho haya huleta mchanga na changarawe vinavyojaza mtambo wa biogesi kadiri miaka inavyopita. Viache vitulie chini kwenye shimo la kuchanganyia na acha sehemu ya mwisho humo.
# of 4ef8778a, reviewed: false
cautions-animal_disease_import-text = Vitu vinavyotoka shamba jingine, sokoni, jikoni au mahali pa kuchinjia vinaweza kubeba magonjwa ya mifugo. Uliza mamlaka ya afya ya mifugo, usichukue chochote kutoka maeneo yenye zuio, na safisha magari na zana.
# of dc948750, reviewed: false
cautions-cyanide_feed-text = Malisho haya yanaweza kutoa sianidi yakiwa mabichi. Yakatekate mahali penye hewa wazi, yanyaushe, yaloweke au yachachushe kwanza, zuia wanyama wasiyafikie, na lisha kidogo.
# of bf910220, reviewed: false
cautions-sharp_foreign_matter-text = Malisho haya mara nyingi huficha vioo, vyuma, mifupa au plastiki. Yachambue kwa uma na glavu; vipande vikali hukata mikono na hutoboa mifuko.
# of 26311114, reviewed: false
cautions-bag_puncture_pressure-text = Mfuko huchanika kwa vitu vyenye ncha kali, kwato na moto, na hupasuka kwa presha na kuachilia gesi yake yote. Uzungushie uzio na uwekee kivuli, zuia miali ya moto isikaribie chini ya 5 m, na usizibe kamwe kipunguza presha chake.
# of 7d792448, reviewed: false
cautions-drum_corrosion-text = Pipa la gesi lenye kutu huvuja gesi na huwa dhaifu mno kusimamiwa. Liondoe kutu na lipake rangi upya kila mwaka gesi ikiwa imefungwa na miali yote ya moto ikiwa imezimwa, usisimame kamwe juu yake, na kagua reli yake ya kuongozea.
# of c3a7e0fc, reviewed: false
cautions-dome_lid_pressure-text = Presha ya gesi inaweza kurusha mfuniko wa kuba. Usisimame kamwe juu ya mfuniko wala kuulegeza ukiwa chini ya presha; kwanza zima miali yote ya moto na acha geji ishuke hadi sifuri kwa kuachilia gesi nje ya nyumba, na hakikisha mlango wa kutolea haujaziba.
# of d212b7b3, reviewed: false
cautions-batch_opening-text = Kufungua tanki la kujazwa mara moja ni kufungua nafasi ya gesi. Kwanza choma gesi au iachilie, zima kila mwali wa moto ndani ya 10 m, lifungue ukiwa upande ambao upepo unatokea, lipitishe hewa kwa siku kadhaa, na usipande kuingia ndani ili kulimwaga; kazi ya kuingia iachie timu iliyofunzwa.
