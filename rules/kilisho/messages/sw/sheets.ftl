# of 35bb1299, reviewed: false
sheet-dangers = Soma haya kwanza
# of 0c7823e8, reviewed: false
sheet-container = Chombo
# of 7508da17, reviewed: false
sheet-dung-or-feed = Kinyesi au malisho
# of 7ca7dea9, reviewed: false
sheet-water = Maji
# of 26a42b03, reviewed: false
sheet-urine = Mkojo
# of 4aab9349, reviewed: false
sheet-full-weighs = Kikijaa, kimoja kina uzito
# of 10ce92c5, reviewed: false
sheet-container-of = { $name }, { $volume }
# of 39132c40, reviewed: false
sheet-whole-containers = Vyombo vizima
# of e08c0aa8, reviewed: false
sheet-days = Siku
# of cf9c7aa2, reviewed: false
sheet-when = Lini
# of 9b8617fd, reviewed: false
sheet-again-every = Kila
# of 200651a8, reviewed: false
sheet-once = mara moja
# of f47f1edc, reviewed: false
sheet-what-to-do = La kufanya
# of b833d36f, reviewed: false
sheet-day = siku ya { $day }
# of f6b2cdc9, reviewed: false
sheet-later-days =
    { $count ->
        [one] Siku moja ya baadaye iko kwenye kalenda.
       *[other] Siku { $count } za baadaye ziko kwenye kalenda.
    }
# of 6e177bda, reviewed: false
sheet-failed = Si kama inavyopaswa: haya hayajatimizwa
# of 474cd296, reviewed: false
sheet-failed-title = { $title }.
# of 117adf01, reviewed: false
sheet-unknown = Haijulikani
# of 33f4cf39, reviewed: false
sheet-unknown-dangers = Hakuna aliyesema kama haya yametimizwa. Hadi mtu aangalie, hakuna hata moja lililo salama.
# of b48b0d4d, reviewed: false
sheet-unknown-others =
    { $count ->
        [one] Ukaguzi mmoja zaidi, wenye uzito mdogo, unakosa taarifa; jibu kamili linauorodhesha.
       *[other] Kaguzi { $count } zaidi, zenye uzito mdogo, zinakosa taarifa; jibu kamili linaziorodhesha.
    }
# of 68f881db, reviewed: false
sheet-all-known = Kaguzi zote za mpango huu ziliweza kufanywa.
# of 7359807c, reviewed: false
sheet-measure = Pima haya kwanza, ili upate takwimu za uhakika
# of a08fcd84, reviewed: false
sheet-care = Kuwa mwangalifu
# of c840421a, reviewed: false
sheet-lesser-cautions =
    { $count ->
        [one] Tahadhari moja ndogo imeachwa hapa ili hatari zisemwe kwa Kiingereza pia; jibu kamili linaiorodhesha.
       *[other] Tahadhari ndogo { $count } zimeachwa hapa ili hatari zisemwe kwa Kiingereza pia; jibu kamili linaziorodhesha.
    }
# of 8a7525b1, reviewed: false
sheet-notes = Maelezo
# of b5f82bb7, reviewed: false
sheet-pair = { $name }: { $value }
# of 287ea966, reviewed: false
sheet-brackets = Namba zilizo kwenye mabano ni kadirio ambamo hali tisa kati ya kumi zimo.
# of 3cc70d06, reviewed: false
sheet-assumed =
    { $count ->
        [one] Takwimu moja ilikisiwa pale ambapo hakuna kilichotajwa; jibu linaiorodhesha.
       *[other] Takwimu { $count } zilikisiwa pale ambapo hakuna kilichotajwa; jibu linaziorodhesha.
    }
# of b6b2c0c9, reviewed: false
sheet-worked-out = Imekokotolewa na Kilisho kwa kitabu cha kanuni { $id } { $version } ({ $hash }).
# of fc2ff759, reviewed: false
sheet-not-reviewed = Bado hakuna mzungumzaji aliyehakiki tafsiri hii. Ukiwa na shaka, muulize mtu anayesoma Kiingereza.
# of 1a9b10b0, reviewed: false
sheet-untranslated =
    { $count ->
        [one] Sentensi moja iko kwa Kiingereza kwa kukosa tafsiri.
       *[other] Sentensi { $count } ziko kwa Kiingereza kwa kukosa tafsiri.
    }
# of 123fd666, reviewed: false
signal-danger = hatari
# of 4bd9354b, reviewed: false
signal-warning = onyo
# of 3cf083c2, reviewed: false
signal-caution = tahadhari
# of 9368a7d2, reviewed: false
signal-notice = taarifa
# of 54263957, reviewed: false
sheet-charge-title = Ujazaji wa kwanza
# of 09153c03, reviewed: false
sheet-what-goes-in = Kinachoingia
# of 6424ffa1, reviewed: false
sheet-in-one-go = Kwa mara moja, yote yakiwa yamethibitishwa
# of ac5b36b6, reviewed: false
sheet-slurry = Tope
# of 597ff84f, reviewed: false
sheet-same-in-containers = Hayo hayo, kwa vyombo vizima
# of 80234c2b, reviewed: false
sheet-work = { $hours } za kazi.
# of d9d08026, reviewed: false
sheet-work-days =
    { $days ->
        [one] { $hours } za kazi, kwa siku moja pamoja na watu wanaosaidia.
       *[other] { $hours } za kazi, kwa siku { $days } pamoja na watu wanaosaidia.
    }
# of f5039ddd, reviewed: false
sheet-confirm = Thibitisha kabla ya kujaza
# of 90305c1b, reviewed: false
sheet-confirm-state = { $name }:
# of 9599915b, reviewed: false
sheet-confirmed = imethibitishwa
# of affdb72f, reviewed: false
sheet-refused = HAIJATIMIZWA: usijaze
# of f7e9cc9a, reviewed: false
sheet-state-unknown = haijulikani: usijaze kabla ya kujua
# of ec614930, reviewed: false
sheet-gather = Kusanya ya kutosha
# of 76308488, reviewed: false
sheet-start-by = Ili iwepo ya kutosha siku ya kujaza, anza si baada ya { $date }.
# of fa8386c6, reviewed: false
sheet-from = Kutoka { $name }: { $mass }.
# of b9f7be15, reviewed: false
sheet-ways = Njia za kufidia kinachopungua:
# of 21718460, reviewed: false
sheet-no-way = Pungufu ni { $mass }, na shamba hili halina njia ya kulifidia.
# of ce7f082d, reviewed: false
sheet-heap = Lundo
# of 8df80bf9, reviewed: false
sheet-first-flame = Gesi ya kwanza na mwali wa kwanza
# of 949f0fcd, reviewed: false
sheet-may-not-start = Ujazaji huu huenda usianze wenyewe. Pata tope lililomeng'enywa kutoka mtambo unaofanya kazi.
# of 8b9ef43b, reviewed: false
sheet-burns-after = Gesi inayowaka baada ya { $modelled } kwa modeli ya mchakato, baada ya { $practice } kwa uzoefu. Usijaribu mwali wowote kabla ya siku yake iliyo hapo juu.
# of b6e6165f, reviewed: false
sheet-burns-in-practice = Baada ya { $practice } kwa uzoefu. Usijaribu mwali wowote kabla ya siku yake iliyo hapo juu.
# of 630c478b, reviewed: false
sheet-then-feed = Kisha lisha, { $steps }.
# of 79099ed7, reviewed: false
sheet-from-day = kuanzia siku ya { $day } kwa { $feed }
# of a4cc3298, reviewed: false
sheet-feed-title = Kulisha mtambo
# of d16af94c, reviewed: false
sheet-at-each-feeding = Kwa kila ulishaji, kila { $every }
# of b79e2300, reviewed: false
sheet-at-each-feeding-daily = Kwa kila ulishaji, kila siku
# of 31eecde3, reviewed: false
sheet-weighed = Hayo hayo, kwa uzito na kipimo
# of 4852ca70, reviewed: false
sheet-urine-for-water = Mkojo, badala ya maji
# of 7ef84dcd, reviewed: false
sheet-expect = Nini cha kutarajia
# of bb75a604, reviewed: false
sheet-mean-of-year = Kwa wastani wa mwaka
# of 49c579d7, reviewed: false
sheet-left-over = Isiyolishwa, ya shamba
# of 52cbe86b, reviewed: false
sheet-gas-as-used = Gesi, jinsi inavyotumika
# of 1bebe9c4, reviewed: false
sheet-digestate = Tope lililomeng'enywa
# of bd2d0cb4, reviewed: false
sheet-retention = Muda wa kukaa kwa tope
# of fe380a99, reviewed: false
sheet-storing = Kuhifadhi, na baada ya ulishaji uliokosekana
# of 500e8043, reviewed: false
sheet-largest-feeding = Kwa ulishaji mmoja si zaidi ya { $mass }.
# of b659f006, reviewed: false
sheet-missed =
    { $missed ->
        [one] Ulishaji mmoja ulikosekana: ufidie kwa ulishaji { $over }.
       *[other] Ulishaji { $missed } ulikosekana: ufidie kwa ulishaji { $over }.
    }
# of 3246953f, reviewed: false
sheet-plan-title = Mpango wa biogesi
# of ef1852a3, reviewed: false
sheet-from-on = Kuanzia { $date }; kabla ya hapo kama siku zilizo chini zinavyosema.
# of 9daedf56, reviewed: false
sheet-bucket-weighs = { $container }; kikijaa malisho, kimoja kina uzito wa { $load }.
# of c928adf3, reviewed: false
sheet-in-numbers = Mpango kwa takwimu
# of 38b61cfc, reviewed: false
sheet-built-already = Mtambo tayari umechaguliwa au umejengwa.
# of 31cc12b5, reviewed: false
sheet-volume-in-all = Mtambo, kwa jumla
# of 4b0830cb, reviewed: false
sheet-gas-store = Gesi unayohifadhi
# of fdfcfebf, reviewed: false
sheet-charge-feed = Ujazaji wa kwanza, malisho
# of f77b4ee6, reviewed: false
sheet-charge-water = Ujazaji wa kwanza, maji
# of e066e3f3, reviewed: false
sheet-charge-in = Ujazaji wa kwanza, { $name }
# of 7dea4fa1, reviewed: false
sheet-feed-and-water = malisho { $feed }, maji { $water }
# of 355e8bdf, reviewed: false
sheet-missing-so-far = Pungufu hadi sasa
# of 48ed126b, reviewed: false
sheet-gas-wanted = Gesi inayotakiwa
# of 148753e4, reviewed: false
sheet-of-it-covered = { $gas }, imekidhiwa { $share }
# of f77ab324, reviewed: false
sheet-enough-for = Inatosha kwa
# of 56df9237, reviewed: false
sheet-year = Gesi ya mwaka wa kwanza
# of e24ea360, reviewed: false
sheet-year-caption = Kila upau ni gesi ya kawaida ya mwezi wake kwa m³ kwa siku; mstari uliosimama ni ile ambayo mashamba tisa kati ya kumi ya aina hii yangepata.
# of bacee11c, reviewed: false
sheet-year-starts = Ujazaji wa aina hii huanza wenyewe katika { $starts } ya hali tu. Usipoanza, nguzo hizi ni gesi isiyowaka: ongeza tope lililomeng'enywa kutoka mtambo unaofanya kazi, na usilishe mpaka iwake.
# of 6d6d7319, reviewed: false
sheet-left-out = Haimo katika mpango huu: { $operation }, kwa kuwa { $because }.
# of d6f81311, reviewed: false
operation-sizing = Upangaji wa ukubwa
# of 54263957, reviewed: false
operation-first_charge = Ujazaji wa kwanza
# of 3be6d193, reviewed: false
operation-maintenance_feed = Ulishaji wa kawaida
# of 54101007, reviewed: false
operation-gas_forecast = Utabiri wa gesi
# of 6b8ec261, reviewed: false
operation-gas_use = Matumizi ya gesi
# of 1bebe9c4, reviewed: false
operation-digestate = Tope lililomeng'enywa
# of e92cb2cb, reviewed: false
operation-safety_check = Ukaguzi wa usalama
