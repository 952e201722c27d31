# of b833d36f, reviewed: false
drawing-day = siku { $day }
# of c0625b5f, reviewed: false
drawing-kilograms-of = { $name } [kg]
# of 54101007, reviewed: false
drawing-forecast-title = Utabiri wa gesi
# of 0936ab5c, reviewed: false
drawing-forecast-gas = Gesi [m³ kwa siku]
# of 4a29712d, reviewed: false
drawing-forecast-temperature = Joto la tope [°C]
# of 7d840dd0, reviewed: false
drawing-forecast-acid-risk = Hatari ya kuchacha
# of 7eaaf829, reviewed: false
drawing-forecast-first-burnable-gas = gesi ya kwanza inayowaka
# of 9de535db, reviewed: false
drawing-forecast-key =
    Mistari: ya kawaida. Mistari mlalo: kadirio ambamo sampuli tisa kati ya kumi zimo. Kila ngazi ni wastani wa siku, wiki au mwezi wake. Hatari ya kuchacha: mistari mlalo imepanda, nyeusi ni kubwa.
# of 6a5f27c2, reviewed: false
drawing-forecast-from =
    { $days ->
        [one] Siku moja kuanzia { $first }.
       *[other] Siku { $days } kuanzia { $first }.
    }
# of b4be1350, reviewed: false
drawing-forecast-total = Kwa jumla { $gas } za gesi.
# of f9bb9c25, reviewed: false
drawing-forecast-total-and-least = Kwa jumla { $gas } za gesi; kidogo kabisa { $least }, siku ya { $day }.
# of f22fb810, reviewed: false
drawing-forecast-burnable-after = Gesi ya kwanza inayowaka baada ya { $after }.
# of 4383212f, reviewed: false
drawing-forecast-share-that-starts = { $share } ya sampuli zinaanza.
# of 60efc574, reviewed: false
drawing-forecast-highest-acid-risk = Hatari kubwa zaidi ya kuchacha: { $risk }.
# of 6c1ff09d, reviewed: false
acid_risk-low = ndogo
# of d9325e09, reviewed: false
acid_risk-raised = imepanda
# of 6ef7c9b1, reviewed: false
acid_risk-high = kubwa
# of 93c22646, reviewed: false
drawing-hours-title = Gesi kwa siku nzima
# of 3869536d, reviewed: false
drawing-hours-gas = Gesi [m³ kwa saa]
# of 40bd5833, reviewed: false
drawing-hours-stored = Katika hifadhi mwisho wa saa [m³]
# of 2b0ef45d, reviewed: false
drawing-hours-key =
    Mistari mlalo: gesi inayotakiwa kila saa; nyeusi ni sehemu isiyopatikana. Mstari: gesi inayotengenezwa. Chini: gesi iliyo hifadhini.
# of 36ca2002, reviewed: false
drawing-hours-wanted-and-made = Inatakiwa { $wanted }, inatengenezwa { $made }.
# of 86faa363, reviewed: false
drawing-hours-gas-runs-out = Gesi inaisha: { $spells }.
# of 40f4bf12, reviewed: false
drawing-hours-spell = { $start } hadi { $end }
# of d63464b6, reviewed: false
drawing-hours-gas-lasts = Kwa matumizi ya kawaida gesi haiishi.
# of d1627b4d, reviewed: false
drawing-charge-title = Gesi ya ujazaji mmoja
# of 0936ab5c, reviewed: false
drawing-charge-gas = Gesi [m³ kwa siku]
# of a9c1af89, reviewed: false
drawing-charge-gas-so-far = Gesi hadi sasa [m³]
# of fe7280cb, reviewed: false
drawing-charge-recharge = kujaza upya
# of e980c8c8, reviewed: false
drawing-charge-key =
    Mistari: ya kawaida. Mistari mlalo: kadirio ambamo sampuli tisa kati ya kumi zimo. Vistari: gesi inayowaka; nyingine huachiliwa. Nukta: siku ya kujaza upya.
# of 095bcad8, reviewed: false
drawing-charge-gives = Ujazaji mmoja hutoa { $gas } za gesi katika { $retention }.
# of 5b52aa5d, reviewed: false
drawing-charge-gives-nothing = Ujazaji mmoja hautoi gesi ya kutegemewa.
# of d5b0d618, reviewed: false
drawing-charge-in-turn =
    { $digesters ->
        [one] Mtambo mmoja: hujazwa upya kila { $every }.
       *[other] Mitambo { $digesters } kwa zamu: mmoja hujazwa upya kila { $every }.
    }
# of e8faee72, reviewed: false
drawing-heap-title = Lundo na mahitaji
# of 378fa15b, reviewed: false
drawing-heap-about = Malundo kwa kilo kwa siku hadi kujaza, kulinganisha na mahitaji ya ujazaji.
# of 55d1258c, reviewed: false
drawing-heap-key =
    Mstari mnene: kilicho kwenye lundo. Vistari: kinachohitajiwa na ujazaji, mistari mlalo ni kadirio lake. Upau wa mwisho: kadirio la lundo siku ya kujaza.
# of 12edfaa4, reviewed: false
drawing-heap-filling-day = siku ya kujaza: { $mass }
# of f4dca48a, reviewed: false
drawing-heap-filling-on = kujaza, { $date }: { $mass }
# of d2639014, reviewed: false
drawing-heap-needed = inahitajika { $mass }
# of f4201186, reviewed: false
drawing-section-dome = Kuba isiyosogea na tanki lake
# of aeaf9908, reviewed: false
drawing-section-drum = Pipa linaloelea
# of 9a409895, reviewed: false
drawing-section-bag = Mfuko, kwa urefu na kwa upana
# of 4a103f5f, reviewed: false
drawing-section-cylinder = Silinda
# of c6bb1948, reviewed: false
drawing-section-title = { $shape }, { $volume }
# of bf28ef64, reviewed: false
drawing-section-about = Mkato kwa skeli.
# of 6cd30352, reviewed: false
drawing-section-no-structural-design = Mchoro wa kupangia kwa skeli. Si usanifu wa ujenzi: usijenge kwa huo.
# of ff31866a, reviewed: false
drawing-section-dome-dashed = Vistari: njia za kuingizia na kutolea (hazijapimwa), na viwango vyote viwili hifadhi ya gesi ikiwa imejaa.
# of 85f52f89, reviewed: false
drawing-section-drum-dashed = Pipa limechorwa likiwa limejaa gesi. Vistari: sketi yake ndani ya tope (haijapimwa).
# of 736ae709, reviewed: false
drawing-section-bag-film = Mzingo wa plastiki { $length }.
# of 3bf5f375, reviewed: false
drawing-section-person = Mtu ana kimo cha { $height } na yupo kwa ajili ya skeli tu.
# of 3f2f7e00, reviewed: false
drawing-section-scale = { $length }; urefu wote kwa mita
# of aed7c516, reviewed: false
drawing-section-slurry = tope
# of 2fe840e1, reviewed: false
drawing-section-gas = gesi
# of 266bfd2c, reviewed: false
drawing-section-measure = { $name }: { $measure }
# of 50ce3004, reviewed: false
drawing-section-total-volume = Ujazo wote wa ndani
# of ac5b36b6, reviewed: false
drawing-section-working-volume = Tope
# of d2e95aba, reviewed: false
drawing-section-gas-storage-volume = Hifadhi ya gesi
# of 24d19d7b, reviewed: false
drawing-section-inner-diameter = Kipenyo cha ndani
# of 18eda86c, reviewed: false
drawing-section-inner-height = Kimo cha ndani
# of 5383886c, reviewed: false
drawing-section-slurry-depth = Kina cha tope
# of d57074c1, reviewed: false
drawing-section-slurry-depth-at-rest = Kina cha tope likitulia
# of 7480264a, reviewed: false
drawing-section-gas-space-height-at-rest = Kimo cha nafasi ya gesi ikitulia
# of 3c6736ae, reviewed: false
drawing-section-compensation-tank-diameter = Kipenyo cha tanki la kusawazisha
# of 296cdbcc, reviewed: false
drawing-section-compensation-tank-depth = Kina cha tanki la kusawazisha
# of 1b18d34c, reviewed: false
drawing-section-pit-diameter = Kipenyo cha shimo
# of 72cae512, reviewed: false
drawing-section-drum-diameter = Kipenyo cha pipa
# of f6d41a31, reviewed: false
drawing-section-gas-height-in-full-drum = Kimo cha gesi pipa likijaa
# of adc95605, reviewed: false
drawing-section-length = Urefu
# of 54a71934, reviewed: false
drawing-section-diameter = Kipenyo
# of bfe2eca4, reviewed: false
drawing-section-height = Kimo
# of 6b3c1232, reviewed: false
drawing-buckets-title = Kinachoingia kwa ulishaji mmoja
# of 4d76e675, reviewed: false
drawing-year-title = Gesi kwa mwaka mzima
