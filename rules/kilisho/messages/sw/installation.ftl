# of a228c279, reviewed: false
installation-verdict-danger = Ukaguzi wa kiwango cha hatari haukutimizwa: simamisha kinachotajwa, na ukirekebishe kabla ya jambo lingine lolote.
# of 7397429a, reviewed: false
installation-verdict-doubtful = Namba moja ya kumbukumbu haiwezi kuwa sahihi; kinachotokana nayo hakiamuliwi hadi isahihishwe.
# of b20f3559, reviewed: false
installation-verdict-faulty = Kuna kasoro ya ukubwa, malisho au gesi; matokeo ya kaguzi yanasema la kufanya.
# of 355ef7e2, reviewed: false
installation-verdict-attention = Hakuna kasoro ya ukubwa, malisho wala gesi, lakini ukaguzi wa kiwango cha onyo au tahadhari haukutimizwa.
# of 69549c4b, reviewed: false
installation-verdict-unknown = Hakuna lililotajwa linaloshindwa ukaguzi, lakini si yote yaliyotajwa: hii si hati ya usalama.
# of 6360cabb, reviewed: false
installation-verdict-sound = Kaguzi zote zilijibiwa na hakuna ya kiwango cha tahadhari au zaidi iliyoshindwa.
# of 597bdb35, reviewed: false
installation-substrate = Kinacholishwa hakikutajwa: ni kile anachotoa mnyama.
# of 721ae5e0, reviewed: false
installation-housing = Mahali mifugo inapokaa hapakutajwa.
