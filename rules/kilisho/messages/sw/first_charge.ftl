# of 3050d5d9, reviewed: false
heap-gathered = { $days ->
    [one] { $name }: siku { $days } inaleta { $brought }, ambapo { $left } inabaki wakati wa kujaza.
   *[other] { $name }: siku { $days } zinaleta { $brought }, ambapo { $left } inabaki wakati wa kujaza.
}
# of 2b8e4856, reviewed: false
heap-added = { $days ->
    [one] { $name }: tayari palikuwa na { $there }, na siku { $days } inaleta { $brought }, ambapo { $left } inabaki wakati wa kujaza.
   *[other] { $name }: tayari palikuwa na { $there }, na siku { $days } zinaleta { $brought }, ambapo { $left } inabaki wakati wa kujaza.
}
# of 87e1e527, reviewed: false
heap-needed = Ujazaji unahitaji { $needed }.
# of bf0dcb04, reviewed: false
heap-short = Pungufu ni { $short }.
# of b1d64ed2, reviewed: false
stockpile-enough = Hiyo inatosha.
# of c6db9583, reviewed: false
stockpile-never = Ukusanyaji wa shambani peke yake hautoshi kamwe.
# of 9e4febea, reviewed: false
stockpile-enough-on = { $days ->
    [one] Ukusanyaji wa shambani unatosha baada ya siku { $days }, tarehe { $date }.
   *[other] Ukusanyaji wa shambani unatosha baada ya siku { $days }, tarehe { $date }.
}
# of a8b111d4, reviewed: false
stockpile-too-old = { $days ->
    [one] Wakati huo kinyesi cha zamani zaidi kina siku { $days }, kupita { $keeps } ambazo hudumu chini ya kifuniko hiki.
   *[other] Wakati huo kinyesi cha zamani zaidi kina siku { $days }, kupita { $keeps } ambazo hudumu chini ya kifuniko hiki.
}
# of 87f10549, reviewed: false
assumed-cover = Hakuna aliyesema kwamba lundo limefunikwa.
# of 91c3ef9f, reviewed: false
remedy-purchase = Chukua { $bought } kutoka kwa wengine.
# of d1631aa6, reviewed: false
remedy-never = Ukusanyaji wa shambani hautoshi kamwe.
# of 90c2e415, reviewed: false
remedy-wait = { $days ->
    [one] Subiri hadi kinyesi chako cha siku { $days } kiwepo; chini ya kifuniko hiki kinyesi hudumu { $keeps }.
   *[other] Subiri hadi kinyesi chako cha siku { $days } kiwepo; chini ya kifuniko hiki kinyesi hudumu { $keeps }.
}
# of 4c1ff892, reviewed: false
remedy-starter = Weka badala ya sehemu iliyopungua tope lililomeng'enywa kutoka mtambo unaofanya kazi ambao mifugo yake ina afya.
# of e53da417, reviewed: false
remedy-smaller-fill = Jaza hadi { $share } ya ujazo wote na ongeza sehemu iliyobaki kadiri kinyesi kinavyopatikana; mlango wa kuingizia na wa kutolea lazima ibaki chini ya tope (kwa kawaida kuanzia { $least }).
# of 28f54969, reviewed: false
labour-hauling = { $mass } zinatoka mahali pengine. Kuzisafirisha hadi shambani hakujahesabiwa katika saa hizi: panga mkokoteni au gari kwa ajili hiyo.
# of 18692639, reviewed: false
fill = Jaza kwa mara moja: changanya na maji bila mabonge, zuia mchanga, mawe na nyasi kavu ndefu.
# of 863436c9, reviewed: false
fill-refused = Usijaze. Hayajatimizwa: { $names }.
# of bbc9073e, reviewed: false
fill-when-there = Jaza tu wakati sehemu iliyopungua ipo.
# of 25815919, reviewed: false
fill-once-confirmed = Baada ya haya kuthibitishwa: { $names }. { $fill }
# of 387b1389, reviewed: false
start-up-close = Funga mlango wa kutolea gesi baada tu ya hewa kusukumwa nje kadiri ujazaji unavyoruhusu; weka kila mwali mbali na mtambo.
# of dca7f451, reviewed: false
start-up-vent = { $cycles ->
    [one] Achilia gesi ya kwanza hewani nje, bila kuichoma na hadi presha iishe, mara nafasi ya gesi inapojaa.
   *[other] Achilia gesi ya kwanza hewani nje, bila kuichoma na hadi presha iishe, kila mara nafasi ya gesi inapojaa, mara { $cycles } kwa jumla.
}
# of c7f330f8, reviewed: false
start-up-flame = Hapo tu ndipo ujaribu mwali: nje ya nyumba, kwenye kifaa kilicho mwishoni mwa bomba lake, kamwe si kwenye kuba, kifuniko au mlango wa kutolea.
# of 4fb52b19, reviewed: false
start-up-again = Usipowaka kwa utulivu kwa mwali wa buluu, achilia gesi tena, subiri siku moja au mbili na ujaribu tena; usilishe mtambo.
# of e504801b, reviewed: false
start-up-feed = Mwali ukiwaka kwa utulivu kwa siku tatu, anza ulishaji wa kawaida kwa robo ya kiasi kamili.
# of 75e16dfa, reviewed: false
start-up-sours = Ujazaji wa namna hii huchacha kwa urahisi: jaza kwa kinyesi kibichi cha ng'ombe au nyati peke yake, pamoja na tope lililomeng'enywa kutoka mtambo unaofanya kazi pale linapopatikana, na ongeza mengine mwali ukishawaka.
# of 634ab5d1, reviewed: false
start-up-latrine = Hakuna kitu cha chooni kilicho sehemu ya ujazaji: unganisha choo mara gesi inapowaka, ili kitiririshe moja kwa moja ndani na mtu yeyote asishike kinyesi hicho.
# of e0480309, reviewed: false
schedule-confirm = Thibitisha kukomaa kwa uashi, kutovuja maji na kutovuja gesi; usijaze kabla ya hapo.
# of 5ce5191a, reviewed: false
schedule-collect = Anza kukusanya kinyesi safi chini ya kifuniko.
# of 4c08ca58, reviewed: false
schedule-purchases = Hakikisha vyote vilivyonunuliwa vimeletwa na kufunikwa kando ya mtambo.
# of 9ab20bab, reviewed: false
schedule-first-gas = Kuanzia sasa gesi inatokea, ikiwa imechanganyika na hewa: iachilie hewani nje, bila kuichoma, na weka kila mwali mbali.
# of 4d8c33cf, reviewed: false
schedule-flame = Jaribu mwali nje ya nyumba kwenye kifaa, baada ya kuachilia gesi.
# of 63f0102b, reviewed: false
schedule-flame-unsure = Jaribu mwali nje ya nyumba kwenye kifaa, baada ya kuachilia gesi; usiutegemee bila tope lililomeng'enywa kutoka mtambo unaofanya kazi.
# of 9db4993b, reviewed: false
schedule-flame-sours = Jaribu mwali nje ya nyumba kwenye kifaa, baada ya kuachilia gesi; usiutegemee, kwa sababu ujazaji wa namna hii huchacha kwa urahisi.
# of 45aa9973, reviewed: false
schedule-feed = Mwali ukiwaka kwa utulivu kwa siku tatu: lisha { $share } ya kiasi kamili kila siku.
