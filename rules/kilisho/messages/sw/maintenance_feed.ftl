# of 521201d4, reviewed: false
assumed-feed = Hakuna kinachosema ni kiasi gani kinalishwa: ni kile kinachodumisha muda wa kukaa uliopangwa.
# of b2a39951, reviewed: false
urine = Wataalamu wa kazi hii huona kwamba mkojo huongeza gesi. Modeli haihesabu gesi ya mkojo wenyewe: huokoa maji, huleta nitrojeni na kinga dhidi ya kuchacha, na husaidia zaidi pale malisho yanapopungukiwa nitrojeni; ukizidi huzuia vijidudu.
# of 4d6eb8cb, reviewed: false
between-feedings = Hifadhi inayosawazisha gesi kati ya ulishaji wawili; kinachohitajiwa na saa za matumizi huongezwa juu yake, tazama upangaji wa ukubwa.
# of e61ed34b, reviewed: false
trade-gas = Gesi kwa kila mnyama kulingana na uzoefu wa kazi hii ni ya mtambo wenye joto, kinyesi kingi na muda mrefu wa kukaa; hapa tope liko { $temperature } na linakaa { $retention }.
# of 8b7adcfd, reviewed: false
trade-gas-inside = Iko ndani ya kadirio la modeli.
# of 228421c7, reviewed: false
trade-gas-outside = Iko nje ya kadirio la modeli: panga kwa kiasi cha modeli.
# of c91c43d0, reviewed: false
operation-batch-structure = Aina hii ya mtambo hujazwa mara moja na kuachwa; haikutengenezwa kwa kulishwa mara kwa mara.
# of 1c8ef87f, reviewed: false
operation-batch-like = Kwa { $every } kati ya ulishaji, huku ni kujaza mara moja: tarajia gesi kwa mawimbi.
# of a9ca9cf7, reviewed: false
operation-irregular = Zaidi ya { $longest } kati ya ulishaji si ulishaji wa mara kwa mara tena; gesi itapanda na kushuka.
# of d13160a3, reviewed: false
operation-regular = Ulishaji wa mara kwa mara: kiasi kile kile kila mara.
# of 0087223a, reviewed: false
storing-fresh = Lisha kikiwa kibichi.
# of 1cff4514, reviewed: false
storing-covered = Weka kinyesi kivulini na kikiwa kimefunikwa hadi kilishwe, cha zamani kwanza; lisha kiasi kile kile kila mara.
# of 64339916, reviewed: false
catching-up = Usilishe kamwe kwa mara moja kile kilichokosekana: si zaidi ya { $extra } juu ya kawaida; simama ikiwa gesi inapungua au tope linachacha.
# of 1cc475da, reviewed: false
clean-feed = Lisha kinyesi safi tu: ondoa nyasi kavu, mabaki, mawe na plastiki, na kikusanye kwenye sakafu ngumu.
# of 7cad3d25, reviewed: false
clean-mixing = Changanya hadi mabonge yaishe, acha mchanganyiko utulie kwa robo saa ili mchanga uzame, kisha uingize na uache mchanga nyuma.
# of 163eebbb, reviewed: false
clean-tank = Ondoa mchanga kwenye tanki la kuchanganyia mara moja kwa wiki.
# of 174ae438, reviewed: false
clean-covers = Rudisha mifuniko ya mlango wa kuingizia na wa kutolea kila baada ya kulisha.
# of b71c10ad, reviewed: false
upkeep-feed = Lisha: changanya, acha mchanga uzame, ingiza, funika.
# of 6182c8c1, reviewed: false
upkeep-sand = Ondoa mchanga kwenye tanki la kuchanganyia; toa maji ya mvuke.
# of a74541a7, reviewed: false
upkeep-soap = Jaribu maungio, vali na vifaa kwa maji ya sabuni.
# of 2cc82d88, reviewed: false
upkeep-desludge = Mashapo huenda yamejaza sehemu yake ya mtambo kufikia sasa: timu iliyofunzwa iyaondoe. Mtu yeyote asiingie.
