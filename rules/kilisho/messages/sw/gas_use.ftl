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
# of d3bdb65e, reviewed: false
use-for-cooking = Kupika
# of fd1f32a1, reviewed: false
use-for-heating = Kupasha joto
# of 13a5aed1, reviewed: false
use-for-refrigeration = Kupoza
# of 07607d60, reviewed: false
use-for-lighting = Mwanga
# of fc22a194, reviewed: false
use-for-shaft-power = Nguvu ya injini
# of a8b41baa, reviewed: false
use-for-electricity = Umeme
# of 171af495, reviewed: false
use-for-other = Matumizi mengine
# of 95c849dc, reviewed: false
use-not-for-cooking = Gesi ya matumizi mengine yasiyo kupika: { $gas }. Haihesabiwi mahali pa nishati za kupikia.
# of c454c857, reviewed: false
use-cooking-counts = Inahesabiwa mahali pa nishati za kupikia.
# of 0583379e, reviewed: false
use-electricity-counts = Haichukui nafasi ya nishati yoyote ya kupikia. Umeme unaozalishwa kwayo unahesabiwa mahali pa umeme wa kiasi hicho hicho, pale umeme ulipo kati ya nishati.
# of 49de56c8, reviewed: false
use-electricity-uncounted = Haichukui nafasi ya nishati yoyote ya kupikia. Umeme unaozalishwa kwayo hauhesabiwi kwa lolote, kwa kuwa hakuna umeme kati ya nishati: utaje ikiwa sasa unanunuliwa au unazalishwa.
# of 78a69778, reviewed: false
use-light-uncounted = Haichukui nafasi ya nishati yoyote ya kupikia. Mafuta ya taa au mishumaa ambayo inaweza kuokoa havihesabiwi: kitabu cha kanuni hakina takwimu za kulinganisha taa kwa mwanga wake.
# of c149c801, reviewed: false
use-other-uncounted = Haichukui nafasi ya nishati yoyote ya kupikia. Inachoweza kuokoa kwa njia nyingine hakihesabiwi: kitabu cha kanuni hakina takwimu za kukilinganisha.
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
# of c489cb1b, reviewed: false
use-left-out-uses = Kinachookolewa na gesi isiyo ya kupikia, kama mafuta ya taa, mafuta ya injini au umeme: kingeongeza kinachookolewa.
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
