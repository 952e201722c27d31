# of 4545f96b, reviewed: false
digestate-balance = Uzito wa tope linaloingia ni uzito wa tope lililomeng'enywa linalotoka pamoja na gesi; kilichogeuka gesi kimepungua kwenye mata hai. Mchanga unaozama unahesabiwa pamoja na tope lililomeng'enywa: hutoka mtambo unapoondolewa tope.
# of fe71bfaf, reviewed: false
digestate-nitrogen = Nitrojeni yote inayolishwa hutoka na tope lililomeng'enywa: mmeng'enyo hugeuza sehemu yake kuwa amonia ya chumvi (ammonium), ambayo mimea huichukua mara moja na hewa huichukua kwa urahisi ule ule. Kinachopotea kwenye hifadhi na shambani ni amonia; kilichofungwa kwenye mata hai huja kwa miaka.
# of 2208941c, reviewed: false
digestate-phosphorus = Fosforasi yote inayolishwa hutoka na tope lililomeng'enywa, isipokuwa inayozama na mashapo na kutoka yanapoondolewa.
# of b9c216c0, reviewed: false
digestate-potassium = Potasiamu yote inayolishwa hubaki imeyeyuka na hutoka na tope lililomeng'enywa; hifadhi iliyo wazi au inayovuja huipoteza.
# of 095ed5ce, reviewed: false
digestate-nutrient-unknown = Haikutajwa: hakuna anayejua ni kiasi gani kimo kwenye malighafi hizi. Kitaje kutokana na kipimo cha maabara.
# of 4fcfa53e, reviewed: false
digestate-fertiliser = Mbolea ya kununua inayoleta nitrojeni ambayo mimea huipata mwaka wa kwanza, na fosforasi na potasiamu kamili. Tope lililomeng'enywa huleta pia mata hai, jambo ambalo mbolea hiyo haifanyi.
# of 290e1409, reviewed: false
digestate-limit-elsewhere = Hakuna aliyetaja kikomo cha mahali hapo. Hii ni kanuni ya kawaida kwingineko, imeonyeshwa kama kipimo tu na haijatumika: kanuni za mahali hapo kwanza.
# of f187821e, reviewed: false
digestate-limit-stated = Kikomo kilichotajwa kimezingatiwa: hakuna shamba linalopata zaidi.
# of f9282b24, reviewed: false
digestate-not-safe = Mtambo wa nyumbani hauui vimelea vyote, hata joto lake na muda wa kukaa uwe wowote: sehemu ya vimelea vya magonjwa na mayai ya minyoo hubaki hai. Vipindi vya kusubiri hupunguza hatari na haviiondoi; osha, menya na pika kinachoota kwenye udongo uliowekwa tope.
# of 00abdbd9, reviewed: false
digestate-excreta-first = Ikiwa kuna kinyesi cha binadamu katika malisho, lihifadhi kwanza kwa muda uliotajwa hapa, na liweke mbali na chochote kinacholiwa kibichi.
# of 66f16f64, reviewed: false
digestate-waiting = Kuanzia tope la mwisho hadi mavuno, ukataji au malisho ya mifugo; muda mrefu zaidi ambao ukaguzi wowote wa kitabu cha kanuni unataka. Kanuni za mahali hapo kwanza.
# of 5b0559ca, reviewed: false
digestate-store = Kuta zilizosimama wima; shimo lenye miteremko linahitaji nafasi zaidi ukingoni. Mvua inayoingia kwenye hifadhi iliyo wazi huongezeka na kinachokauka hupungua: vyote viwili havikuhesabiwa. Hifadhi lazima isivuje, iwe chini ya visima kwenye mteremko, na ifunikwe au izungushiwe uzio ili mtoto au mnyama yeyote asitumbukie.
# of 699d607e, reviewed: false
digestate-store-overflows = Hifadhi iliyopo inafurika kabla ya usambazaji ujao: sambaza mapema kwenye kinachoota, au jenga kubwa zaidi.
# of 842d8603, reviewed: false
digestate-store-unknown = Hakuna aliyesema tope lililomeng'enywa linahifadhiwaje hadi lisambazwe.
# of 5031e54c, reviewed: false
digestate-spreading-unknown = Hakuna aliyesema tope lililomeng'enywa linasambazwaje.
# of f2bff4c5, reviewed: false
digestate-urine-unknown = Mkojo haukutajwa; unaochanganywa huleta nitrojeni na potasiamu zaidi.
