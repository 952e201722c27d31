# of d185b603, reviewed: false
detail-table_content_type = Content-Type lazima iwe moja kati ya: { $types }; maandishi kwa UTF-8.
# of 2c3d9263, reviewed: false
detail-table_too_large = Jedwali lina zaidi ya baiti { $most }.
# of f011db6a, reviewed: false
detail-table_too_long = Jedwali lina zaidi ya mistari { $most }.
# of 1e4abb85, reviewed: false
detail-table_stalled = Sehemu iliyobaki ya jedwali haikufika.
# of 5c15b544, reviewed: false
detail-table_no_room = Hakuna nafasi iliyobaki kwa jedwali hili.
# of 2b6f9ba8, reviewed: false
detail-table_lane_full = Tayari yanafanyiwa kazi majedwali mengi kadiri huduma inavyokubali.
# of f786ef5f, reviewed: false
detail-table_took_too_long = Kukokotoa kipande cha jedwali kulichukua muda mrefu mno.
# of 95055704, reviewed: false
fault-table_empty = jedwali halina mstari wowote
# of 2db39c9a, reviewed: false
fault-table_not_ndjson = hakuna mstari ulio kitu cha JSON
# of e4b5b11e, reviewed: false
fault-table_not_csv = mstari wa kwanza si kichwa cha CSV kwa UTF-8
# of 1a3e9ae3, reviewed: false
fault-table_not_arrow = si mtiririko wa Arrow, au umekatika
# of be6cabb7, reviewed: false
fault-table_not_parquet = si faili ya Parquet, au imekatika
# of d18a1788, reviewed: false
fault-table_broken = kilichomo kwenye faili si kile faili inachosema kujihusu yenyewe
# of a9a80a2e, reviewed: false
fault-table_explodes = sehemu ya faili inakuwa kubwa mno inapofunguliwa; iandike kwa mafungu (batches), makundi ya mistari (row groups) au kurasa (pages) ndogo zaidi
# of b056a2a9, reviewed: false
fault-table_encoding = safu moja imesimbwa kama DELTA_BYTE_ARRAY; iandike kwa njia ya kawaida (plain) au kwa kamusi (dictionary)
# of 6ee00dab, reviewed: false
fault-no_column = hakuna safu yenye jina la sehemu ya kumbukumbu ya mtambo au la kipengele cha ukweli; kichwa kilichosomwa kinaanza na { $names }
# of 10807d48, reviewed: false
fault-required_column = hakuna safu yenye jina hili
# of a903268c, reviewed: false
fault-unread_column = hakuna safu inayosomwa kwa jina hili
# of 931fa63e, reviewed: false
fault-column_twice = safu mbili zina sehemu hii
# of 9b3d41bd, reviewed: false
fault-column_type = aina ambayo safu hii haiwezi kuwa nayo
# of 0e30c81e, reviewed: false
fault-unit_of_column = kizio kilicho kwenye mabano lazima kiwe kimoja kati ya: { $units }
# of c23e6769, reviewed: false
fault-column_without_unit = safu hii haina kizio
# of f0de6502, reviewed: false
fault-at_line = mstari wa { $line } wa faili: { $fault }
# of 99de5fef, reviewed: false
fault-nearest = { $fault } (karibu zaidi: { $nearest })
# of d391b501, reviewed: false
fault-cell_unreadable = si thamani ambayo safu hii inakubali
# of c42be6dc, reviewed: false
fault-cell_number_in_unit = namba kwa { $unit }; desimali hufuata nukta; acha seli wazi ikiwa haijulikani
# of 6958babc, reviewed: false
fault-cell_number = namba; desimali hufuata nukta; acha seli wazi ikiwa haijulikani
# of 3c0c0490, reviewed: false
fault-cell_whole_number = namba kamili; acha seli wazi ikiwa haijulikani
# of 6d5fb74d, reviewed: false
fault-row_denied = inapinga kinachofuata kutoka sehemu nyingine za mstari; iache au zilinganishe
# of ccd798ba, reviewed: false
fault-row_not_an_object = mstari ni kitu (object) chenye safu kama sehemu zake
# of 34f26214, reviewed: false
fault-row_too_long = mstari ni mrefu mno
# of 652b19f7, reviewed: false
fault-row_not_json = si kitu cha JSON kwenye mstari mmoja
# of 36f52d40, reviewed: false
fault-row_repeats_member = unataja sehemu mara mbili
# of eb85fdfa, reviewed: false
fault-row_too_deep = umepangwa kwa kina kupita kiasi
# of 8f8d25ff, reviewed: false
fault-row_not_utf8 = si maandishi kwa UTF-8
# of 6ffe5bb8, reviewed: false
fault-row_not_csv = alama ya kunukuu iko mahali isiporuhusiwa, au hakuna kinachoifunga
# of 26915220, reviewed: false
fault-row_width = una seli { $cells } ilhali kichwa kina { $columns }
# of 8f8d25ff, reviewed: false
fault-cell_not_utf8 = si maandishi kwa UTF-8
