# of 4ffce4f8, reviewed: false
values-agree = Kiasi kilichotajwa kinalingana
# of 86e199f9, reviewed: false
values-agree-why = Inafuata kutoka { $inputs }, ambazo zinasema vingine; kiasi kilichotajwa kimetumika.
# of 169e6a56, reviewed: false
values-agree-do = Pima tena, na zingatia kizio cha kipimo: lita badala ya mita za ujazo ndilo kosa la kawaida.
# of cd7223e4, reviewed: false
safety-stop = Simama. Hayajatimizwa: { $titles }.
# of 81f4652a, reviewed: false
safety-act-at-once = Chukua hatua mara moja. Hayajatimizwa: { $titles }.
# of 86a0af94, reviewed: false
safety-more-unanswered = { $count ->
    [one] Ukaguzi { $count } mwingine wa kiwango cha hatari haujajibiwa.
   *[other] Kaguzi { $count } nyingine za kiwango cha hatari hazijajibiwa.
}
# of afe94683, reviewed: false
safety-unanswered = { $count ->
    [one] Ukaguzi { $count } wa kiwango cha hatari haujajibiwa, hivyo haiwezi kusemwa kuwa ni salama.
   *[other] Kaguzi { $count } za kiwango cha hatari hazijajibiwa, hivyo haiwezi kusemwa kuwa ni salama.
}
# of ca9d4fa1, reviewed: false
safety-lesser-failed = { $count ->
    [one] Ukaguzi { $count } mdogo haukutimizwa.
   *[other] Kaguzi { $count } ndogo hazikutimizwa.
}
# of ae73d23e, reviewed: false
safety-failed = { $count ->
    [one] Ukaguzi { $count } haukutimizwa, si wa kiwango cha hatari.
   *[other] Kaguzi { $count } hazikutimizwa, hakuna hata moja ya kiwango cha hatari.
}
# of 4d56dfa7, reviewed: false
safety-clear = Hakuna ukaguzi ulioshindwa kwa yaliyotajwa.
# of 7aa38b21, reviewed: false
safety-statement = Uamuzi usio na kasoro unamaanisha kwamba hakuna ukaguzi ulioshindwa kwa yaliyotajwa, si kwamba mtambo ni salama: kanuni za mahali hapo na wataalamu wenye leseni ndio wanaoamua.
