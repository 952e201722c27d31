# of c960443e, reviewed: false
use-busiest-hour = saa yenye matumizi makubwa kuliko zote zilizotajwa
# of 161a820c, reviewed: false
use-all-at-once = vifaa vyote kwa wakati mmoja
# of 89bb8a62, reviewed: false
use-cooking-hours = gesi ya siku ndani ya saa za kawaida za kupika
# of e49b04c0, reviewed: false
use-no-pipe-serves = Hakuna ukubwa wa bomba katika kitabu cha kanuni unaokidhi kikomo: fupisha bomba, weka mawili, au choma kidogo kwa wakati mmoja.
# of 12b8b532, reviewed: false
use-pipe-at-least = Angalau: { $size }. Linakidhi kikomo hata kwa mtiririko wa juu wa kadirio; kila bomba pana zaidi pia hukidhi.
# of b44e3257, reviewed: false
use-hours-unknown = Taja saa za matumizi za kila kifaa ili kufuatilia gesi kwa siku nzima.
# of 9a3b07ae, reviewed: false
use-feed-needed = Ukilishwa kwa usawa, kwenye 25 °C na siku 60 za kukaa; mtambo wenye baridi zaidi unahitaji zaidi. Panga ukubwa wa mtambo ili ujue.
# of 08ac7a42, reviewed: false
use-saves = Nishati iliyookolewa inazidi methani inayopotea, katika kadirio lote.
# of 2316b8bb, reviewed: false
use-harms = Methani inayopotea inaongeza joto la dunia kuliko nishati iliyookolewa ingefanya: tafuta uvujaji na utumie gesi yote.
# of c35abb62, reviewed: false
use-uncertain = Uvujaji na kuachilia gesi vinaweza kufuta faida ya nishati iliyookolewa: ni mtambo usiovuja ambao gesi yake yote inatumika tu unaosaidia kwa hakika.
# of 98b6052d, reviewed: false
use-saves-with-manure = Nishati iliyookolewa na methani ambayo samadi haitoi tena vinazidi methani inayopotea, katika kadirio lote.
# of db26522d, reviewed: false
use-harms-with-manure = Methani inayopotea inaongeza joto la dunia kuliko nishati iliyookolewa na methani ya samadi zingefanya: tafuta uvujaji na utumie gesi yote.
# of 6d727e48, reviewed: false
use-uncertain-with-manure = Uvujaji na kuachilia gesi vinaweza kufuta faida ya nishati iliyookolewa na ya samadi: ni mtambo usiovuja ambao gesi yake yote inatumika tu unaosaidia kwa hakika.
# of faacd700, reviewed: false
use-left-out-fire = Methani, oksidi ya naitrojeni na masizi ya moto unaobadilishwa, na utengenezaji wa makaa: vingeongeza kinachookolewa.
# of fca78d09, reviewed: false
use-left-out-manure = Methani ambayo kinyesi kingetoa kwenye lundo au shambani, ambayo mtambo unaweza kuiepusha.
# of ab6ef82e, reviewed: false
use-left-out-nitrous-oxide = Oksidi ya naitrojeni ambayo samadi ingetoa jinsi ilivyohifadhiwa zamani.
# of d8d72531, reviewed: false
use-left-out-slip = Methani inayopita bila kuungua kwenye kichomeo, au inayotoka kwenye tope lililomeng'enywa baada ya kuondoka mtamboni.
# of 210cb2e1, reviewed: false
use-left-out-fertiliser = Mbolea ambayo tope lililomeng'enywa linaichukulia nafasi, na ujenzi wa mtambo.
# of 66af6b81, reviewed: false
use-store-unknown = Hakuna aliyetaja hifadhi: imechukuliwa kuwa kubwa kama matumizi haya yanavyohitaji.
# of 6e755581, reviewed: false
use-pipe-material-unknown = Hakuna aliyeitaja; ndiyo yenye kukwaruza zaidi.
# of b6222f78, reviewed: false
use-feed-unknown = Hakuna aliyesema nini kingelishwa.
# of 87fe6418, reviewed: false
use-climate-unknown = Hakuna aliyetaja wastani wa joto la hewa: kati ya baridi, wastani na joto, imechukuliwa baridi, ambapo samadi hutoa methani kidogo kabisa.
