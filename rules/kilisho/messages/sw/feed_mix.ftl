# of ec99ce0d, reviewed: false
mix-limit-least-total-solids = Yabisi jumla ya tope, angalau
# of 012e5282, reviewed: false
mix-limit-largest-total-solids = Yabisi jumla ya tope, si zaidi ya
# of 72f5f319, reviewed: false
mix-limit-least-ratio = Uwiano wa kaboni na nitrojeni, angalau
# of cc4aa4cb, reviewed: false
mix-limit-largest-ratio = Uwiano wa kaboni na nitrojeni, si zaidi ya
# of 2084a14c, reviewed: false
mix-limit-ammonia = Nitrojeni ya amonia kwenye tope, si zaidi ya
# of c1bc84ea, reviewed: false
mix-limit-loading = Kiwango cha ulishaji, si zaidi ya
# of 2adce40d, reviewed: false
mix-limit-retention = Muda wa kukaa kwa tope, angalau
# of ad889135, reviewed: false
mix-limit-crop-residues = Sehemu ya mabaki ya mazao, si zaidi ya
# of a4faf18f, reviewed: false
mix-limit-water = Maji, si zaidi ya
# of 022e469c, reviewed: false
mix-limit-available = { $of }, si zaidi ya iliyopo
# of f7372cd8, reviewed: false
mix-limit-share = Sehemu ya { $of }, si zaidi ya
# of b1236849, reviewed: false
mix-limit-gas-demand = Biogesi, angalau
# of a0aaf5f4, reviewed: false
mix-holds-least-total-solids = Tope ni jepesi kadiri inavyoruhusiwa ({ $bound }). Hatua moja zaidi ingekuwa tope jepesi zaidi kwa { $step }.
# of e371fa9c, reviewed: false
mix-holds-largest-total-solids = Tope ni zito kadiri inavyoruhusiwa ({ $bound }). Hatua moja zaidi ingekuwa tope zito zaidi kwa { $step }.
# of 29a1dc9a, reviewed: false
mix-holds-least-ratio = Malisho yana nitrojeni nyingi kadiri inavyoruhusiwa ({ $bound }). Hatua moja zaidi ingekuwa uwiano wa kaboni na nitrojeni wa chini zaidi kwa { $step }.
# of 9e5ee478, reviewed: false
mix-holds-largest-ratio = Malisho yana nitrojeni kidogo kadiri inavyoruhusiwa ({ $bound }). Hatua moja zaidi ingekuwa uwiano wa kaboni na nitrojeni wa juu zaidi kwa { $step }.
# of 648d34f8, reviewed: false
mix-holds-ammonia = Amonia iko kwenye kikomo chake ({ $bound }). Hatua moja zaidi ingekuwa amonia zaidi kwa { $step }.
# of f981c50f, reviewed: false
mix-holds-loading = Mtambo unapata mata hai kadiri unavyoweza kubeba ({ $bound }). Hatua moja zaidi ingekuwa kiwango cha ulishaji cha juu zaidi kwa { $step }.
# of 006ed27f, reviewed: false
mix-holds-retention = Tope linakaa muda mfupi kadiri inavyoruhusiwa ({ $bound }). Hatua moja zaidi ingekuwa kukaa muda mfupi zaidi kwa { $step }.
# of 6d0e2c5e, reviewed: false
mix-holds-crop-residues = Mabaki ya mazao, ambayo huelea, yako kwenye kikomo chake ({ $bound }). Hatua moja zaidi ingekuwa mabaki ya mazao zaidi kwa { $step }.
# of 7e11d20f, reviewed: false
mix-holds-water = Maji yote yanatumika ({ $bound }). Hatua moja zaidi ingekuwa maji zaidi kwa { $step }.
# of 9fc2c3f8, reviewed: false
mix-holds-available = { $of } yote inatumika ({ $bound }). Hatua moja zaidi ingekuwa zaidi kwa { $step }.
# of 631a211b, reviewed: false
mix-holds-share = { $of } iko kwenye sehemu yake kubwa zaidi ya yabisi tete ({ $bound }). Hatua moja zaidi ingekuwa sehemu kubwa zaidi kwa { $step }.
# of b9854233, reviewed: false
mix-holds-gas-demand = Gesi inayotakiwa ndiyo inayoamua ({ $bound }). Hatua moja zaidi ingekuwa kutaka gesi pungufu kwa { $step }.
# of cb474b6e, reviewed: false
mix-step-brings-gas = Hilo lingeleta { $gas } za biogesi.
# of ffdd5a42, reviewed: false
mix-step-saves = Hilo lingeokoa { $cost } kwa siku kwa sarafu ya bei zilizotajwa.
# of ff1c830d, reviewed: false
mix-step-eases = Hilo lingepunguza matumizi makubwa zaidi ya kilichopo kwa pointi { $share }.
# of 9ecd5073, reviewed: false
mix-step-nothing = Hilo peke yake lisingeleta chochote.
# of 60ed7e9c, reviewed: false
mix-none = Hakuna mchanganyiko wa vilivyopo unaokidhi vikomo vyote. Kikomo kinacholegezwa hupunguza usalama wa uendeshaji: soma matokeo ya kaguzi za mapishi unayoomba nacho. Hakuna kikomo cha uendeshaji kinachopendekezwa kuwa kipana zaidi ya mara nne; pale hilo lisipotosha, malighafi nyingine zinahitajika.
# of 54cc0966, reviewed: false
mix-allow-least-total-solids = Ruhusu tope jepesi zaidi: { $after } badala ya { $before }.
# of bb94a2c7, reviewed: false
mix-allow-largest-total-solids = Ruhusu tope zito zaidi: { $after } badala ya { $before }.
# of 2b07d548, reviewed: false
mix-allow-least-ratio = Ruhusu uwiano wa kaboni na nitrojeni wa chini zaidi: { $after } badala ya { $before }.
# of cb6ca7c8, reviewed: false
mix-allow-largest-ratio = Ruhusu uwiano wa kaboni na nitrojeni wa juu zaidi: { $after } badala ya { $before }.
# of 57545278, reviewed: false
mix-allow-ammonia = Ruhusu amonia zaidi: { $after } badala ya { $before }.
# of b48ada11, reviewed: false
mix-allow-loading = Ruhusu kiwango cha ulishaji cha juu zaidi: { $after } badala ya { $before }.
# of 52cd0822, reviewed: false
mix-allow-retention = Ruhusu kukaa muda mfupi zaidi: { $after } badala ya { $before }.
# of 7fecc8d3, reviewed: false
mix-allow-crop-residues = Ruhusu mabaki ya mazao zaidi: { $after } badala ya { $before }.
# of d1173418, reviewed: false
mix-allow-water = Ruhusu maji zaidi: { $after } badala ya { $before }.
# of 9b8d68a2, reviewed: false
mix-allow-available = Ruhusu { $of } zaidi: { $after } badala ya { $before }.
# of f04285d9, reviewed: false
mix-allow-share = Ruhusu sehemu kubwa zaidi ya { $of }: { $after } badala ya { $before }.
# of 3890f6e8, reviewed: false
mix-allow-gas-demand = Ruhusu kutaka gesi pungufu: { $after } badala ya { $before }.
# of 565583d9, reviewed: false
mix-proved = Hakuna mchanganyiko ndani ya vikomo ulio bora kwa zaidi ya sehemu hii, kwa modeli na takwimu za kawaida.
# of ef80a418, reviewed: false
mix-price-unknown = Hakuna bei iliyotajwa.
