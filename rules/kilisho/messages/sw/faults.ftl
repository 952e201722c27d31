# of 351450b7, reviewed: false
fault-volume_missing = taja total_volume, working_volume au vyote viwili
# of 38ead25f, reviewed: false
fault-exceeds_total_volume = lazima isizidi total_volume
# of 0b7d8b2a, reviewed: false
fault-two_dilutions = taja water_to_feed_by_volume au target_total_solids, si vyote viwili
# of 0ba9bcf1, reviewed: false
fault-shares_of_substrates = sehemu za malighafi zote lazima zijumlike kuwa 1
# of 287181ac, reviewed: false
fault-mass_for_some = taja uzito wa kila malighafi au usitaje wowote
# of 9d1d304f, reviewed: false
fault-mass_and_share = taja uzito au sehemu, si vyote viwili
# of 6804654b, reviewed: false
fault-substrate_twice = taja kila malighafi mara moja
# of a62a8c45, reviewed: false
fault-amount_missing = taja available, per_day au vyote viwili
# of e1a75ba2, reviewed: false
fault-month_out_of_range = si joto la hewa linalowezekana kwa kizio hiki
# of 807c197f, reviewed: false
fault-mass_or_shares_unknown = taja uzito wake au sehemu: hakuna mnyama wa kundi anayeitoa
# of 5d60fa4e, reviewed: false
fault-no_gas_for_demand = haiwezi kukidhi hitaji la gesi: hakuna malighafi kati ya hizi inayotoa gesi
# of 006c29e0, reviewed: false
fault-demand_twice = taja hitaji mara moja: gas_demand, appliances au people_cooked_for
# of 97a9211c, reviewed: false
fault-nothing_to_size_for = taja kundi lenye mifugo, malisho yenye uzito, au hitaji la gesi
# of e708001b, reviewed: false
fault-starter_fills_digester = lazima iache nafasi ya tope jipya
# of 3cf4737d, reviewed: false
fault-charge_and_starter_too_large = ujazaji na tope lake la kuanzishia vinafanya tope kuliko total_volume inavyobeba
# of d74a31ea, reviewed: false
fault-fuel_twice = taja kila nishati mara moja
# of 2f1846ee, reviewed: false
fault-not_manure = ni kinyesi na mkojo wa wanyama tu vinavyohesabiwa kama samadi hapa
# of f69495b5, reviewed: false
fault-shares_of_fuels = sehemu za nishati zote lazima zisizidi 1
# of 17700121, reviewed: false
fault-substrate_gives_no_gas = malighafi hii haitoi gesi
# of fa728bab, reviewed: false
fault-nothing_to_use = taja appliances, people_cooked_for, gas_demand au biogas_per_day
# of be2db2d0, reviewed: false
fault-nothing_to_forecast = taja ujazaji wa kwanza, ulishaji wa kawaida, au vyote viwili
# of 5deaa2ba, reviewed: false
fault-until_before_from = lazima isiwe kabla ya from
# of 3ebfbfb0, reviewed: false
fault-plans_overlap = unaanza kabla mpango mwingine haujaisha; taja malisho mamoja kwa kila siku
# of fc6edc1f, reviewed: false
fault-mass_unknown = taja uzito wake: hakuna mnyama wa kundi anayeitoa
# of 8c864625, reviewed: false
fault-mass_expected = ulishaji hutajwa kwa uzito, au huchukuliwa kutoka kwenye kundi
# of 3dfb4100, reviewed: false
fault-charge_too_large = ujazaji unafanya tope kuliko total_volume inavyobeba
# of 24740440, reviewed: false
fault-masses_too_large = uzito uliotajwa unafanya tope kuliko total_volume inavyobeba
# of d950a26d, reviewed: false
fault-fact_denied = inapinga kinachofuata kutoka sehemu nyingine za ombi; iache au zilinganishe
# of 82994942, reviewed: false
fault-use_without_length = inaisha inapoanza; siku nzima ni 00:00 hadi 24:00
# of 1b3bd5c7, reviewed: false
fault-use_overlaps = saa zinapishana; orodhesha kando kifaa cha pili kinachowaka kwa wakati huo huo
# of 0a20065b, reviewed: false
fault-hours_denied = inapinga saa za matumizi; taja moja kati ya hizo mbili
# of 735d7c47, reviewed: false
fault-not_fed_daily = mtambo wa kujazwa mara moja hujazwa mara moja; mchanganyiko wa kila siku ni kwa mingine
# of 3d32d5d8, reviewed: false
fault-demand_missing = taja gesi ambayo mchanganyiko wa bei nafuu zaidi lazima utoe; bila hiyo nafuu zaidi ni kutoweka chochote
# of ebbb9a67, reviewed: false
fault-volume_unstated = taja working_volume au mtambo
# of 1da25d81, reviewed: false
fault-volume_twice = itaje kwenye mtambo
# of 050d2d39, reviewed: false
fault-available_unknown = taja available au stock: hakuna mnyama wa kundi anayeitoa
# of 1e041134, reviewed: false
fault-nothing_to_mix = taja angalau malighafi moja ambayo ipo
# of 671bac13, reviewed: false
fault-nothing_to_charge = taja malighafi inayokusanywa kwa ajili ya ujazaji; choo huunganishwa mara gesi inapowaka
# of 67d1177a, reviewed: false
fault-retention_twice = taja hydraulic_retention_time au mtambo, si vyote viwili
# of b986de5e, reviewed: false
fault-water_and_dilution = taja water au dilution, si vyote viwili
# of 1c8df9f0, reviewed: false
fault-urine_twice = malisho tayari yametaja mkojo wa ng'ombe
# of 02eddb36, reviewed: false
fault-daily_mass_unknown = taja uzito wa kila malighafi kwa siku, au kundi linaloitoa
# of 9b568c1b, reviewed: false
fault-gas_exceeds_feed = kwa sifa hizi, kinachotoka kama gesi kingezidi kinacholishwa
# of 93eeaffd, reviewed: false
fault-symptom_twice = taja kila dalili mara moja, kama iliyoonekana au isiyoonekana
# of c998fa51, reviewed: false
fault-nothing_to_diagnose = taja dalili, kipimo au ukweli mmoja
# of a74806bf, reviewed: false
fault-temperature_twice = inatofautiana na /climate/digester_temperature
# of 2c776bdd, reviewed: false
fault-gas_from_nothing = kwa sifa hizi malisho hayatoi gesi, lakini gesi ilipimwa
# of dacd3047, reviewed: false
fault-calendar_needs_date = kalenda inahitaji tarehe hii
# of 1c8c2cb6, reviewed: false
fault-drawing_needs_hours = mchoro unahitaji gesi kwa siku na saa za matumizi za kila kifaa
# of bd552fc1, reviewed: false
fault-outside_forecast = lazima iwe ndani ya utabiri, { $first } hadi { $last }
# of eb822dbe, reviewed: false
fault-too_many_substrates = si zaidi ya malighafi { $most } kwa jumla; ile ile yenye vipimo vingine huhesabiwa tena
# of d748b0c5, reviewed: false
fault-ready_too_early_or_late = lazima iwe siku 0 hadi { $most } baada ya /stockpile/starts_on
# of 7da88abd, reviewed: false
fault-differs_from_group = inatofautiana na { $group } inavyosema
# of d002d724, reviewed: false
fault-limits_disordered = lazima iwe chini ya { $other }
# of f0b2651f, reviewed: false
fault-number_in_unit = namba kwa { $unit }, au kitu chenye value na unit
# of 318b87e0, reviewed: false
fault-value_and_unit = kitu chenye value na { $key } tu
# of 6e228bb6, reviewed: false
fault-unit_expected = { $key } lazima iwe msimbo wa UCUM, kama maandishi
# of a8f68452, reviewed: false
fault-unknown_unit = si kizio ambacho sehemu hii inakijua; tumia kimoja kati ya { $allowed }
# of 6e5d4651, reviewed: false
fault-out_of_range = lazima iwe angalau { $least } na si zaidi ya { $most }
# of b1a5ec7a, reviewed: false
fault-out_of_range_in_unit = lazima iwe angalau { $least } na si zaidi ya { $most } { $unit }
# of b2bcf1c2, reviewed: false
fault-out_of_range_mind_unit = lazima iwe angalau { $least } na si zaidi ya { $most } { $unit }; zingatia kizio cha kipimo
# of ef06b86b, reviewed: false
fault-whole_number = namba kamili
# of 9241d54b, reviewed: false
fault-plain_number = namba bila kizio
# of 9921ea22, reviewed: false
fault-date_expected = siku iliyopo kama YYYY-MM-DD, kuanzia { $first } hadi { $last }
# of ed50d401, reviewed: false
fault-yes_no_expected = true au false
# of ee2b455f, reviewed: false
fault-text_expected = maandishi ya herufi 1 hadi { $longest }
# of ced72f18, reviewed: false
fault-clock_expected = saa ya siku kama HH:MM kwa saa 24
# of 72435ddd, reviewed: false
fault-id_expected = id kama maandishi ya herufi zisizozidi { $longest }
# of cf6370a0, reviewed: false
fault-unknown_id = si id ya { $section } ya kitabu cha kanuni
# of 7e9a3158, reviewed: false
fault-not_one_of = lazima iwe moja kati ya { $allowed }
# of 0b9136dd, reviewed: false
fault-list_of = orodha ya visivyozidi { $most } kati ya: { $allowed }
# of 1a182e37, reviewed: false
fault-too_few_items = ina vitu vichache mno
# of fe1341b9, reviewed: false
fault-too_many_items = ina vitu vingi mno
# of 34c333d1, reviewed: false
fault-missing = sehemu hii inahitajika
# of a7e98e8f, reviewed: false
fault-no_such_member = hakuna sehemu kama hiyo hapa
# of ce38118b, reviewed: false
fault-object_expected = kitu kilitarajiwa
# of 1509e4f7, reviewed: false
fault-list_expected = orodha ilitarajiwa
# of e88ff115, reviewed: false
fault-structure_twice = inatofautiana na /structure; taja aina moja ya mtambo
# of 1eeec20a, reviewed: false
fault-ready_before_building = lazima isiwe kabla ya /construction/starts_on
# of 6c491d1d, reviewed: false
fault-months_deny = inatofautiana na /climate/monthly_air_temperature inavyotoa; iache au zilinganishe
