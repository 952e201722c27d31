# of 57d30a6a, reviewed: false
report-title = Ripoti ya kundi la mitambo ya biogesi
# of 784aeef6, reviewed: false
report-installations = { $count ->
    [one] Mtambo mmoja
   *[other] Mitambo { $total }
}
# of ad2cc12e, reviewed: false
report-invented = Mitambo hii ni ya kubuni; hakuna mstari ulio wa kweli.
# of 7a971a11, reviewed: false
report-invented-some = Mitambo { $total } kati ya hii ni ya kubuni; hakuna hata mmoja kati yake ulio wa kweli.
# of 04e52f1f, reviewed: false
report-what = Kilichoonekana
# of 37bac495, reviewed: false
report-count = Idadi
# of 29887a5f, reviewed: false
report-share = Sehemu
# of b8cafa41, reviewed: false
report-dangerous = Ya hatari
# of 6c10b73f, reviewed: false
report-doubtful = Namba isiyoweza kuwa sahihi
# of fddcb6ed, reviewed: false
report-mis_sized = Ukubwa usiofaa
# of d8a80393, reviewed: false
report-starved = Hailishwi vya kutosha
# of ab65ba09, reviewed: false
report-fed_wrongly = Inalishwa vibaya kwa namna nyingine
# of edad8105, reviewed: false
report-underperforming = Gesi kidogo mno
# of 497d07e8, reviewed: false
report-unknown = Haijulikani vya kutosha
# of 42e3a5bb, reviewed: false
report-refused = Haisomeki
# of 4fa61d63, reviewed: false
report-sound = Mizima katika yote yanayoulizwa
# of 6152ad09, reviewed: false
report-several = Mtambo mmoja unaweza kuwa kwenye mistari kadhaa kati ya hii.
# of e77ab7c5, reviewed: false
report-dangers = Nenda huko kwanza: ukaguzi wa kiwango cha hatari umeshindwa
# of 07298b3a, reviewed: false
report-dangers-none = Katika yaliyotajwa hakuna ukaguzi wa kiwango cha hatari ulioshindwa. Huo si usalama: angalia yale ambayo hakuna aliyeyataja.
# of 96a91c4f, reviewed: false
report-dangers-none-read = Katika mistari iliyosomeka hakuna ukaguzi wa kiwango cha hatari ulioshindwa. Huo si usalama: angalia yale ambayo hakuna aliyeyataja.
# of 34753ae9, reviewed: false
report-unjudged =
    { $count ->
        [one] Mstari mmoja haukuweza kusomwa: unachosema kuhusu hatari hakikukaguliwa.
       *[other] Mistari { $total } haikuweza kusomwa: inachosema kuhusu hatari hakikukaguliwa.
    }
# of 988481e1, reviewed: false
report-open = Hatari hizi hakuna aliyethibitisha kuwa hazipo
# of 95b6e636, reviewed: false
report-open-lead = Katika mitambo { $total } kati ya { $rows } angalau ukaguzi mmoja wa kiwango cha hatari hauna jibu. Hadi mtu atakapokwenda kuangalia, hakuna hata mmoja kati yake ulio salama.
# of 424f0420, reviewed: false
report-open-one = { $check }: haijulikani katika { $share }
# of 02ba30dc, reviewed: false
report-open-others = { $count ->
    [one] Ukaguzi mmoja zaidi wa kiwango cha hatari hauna jibu mahali fulani.
   *[other] Kaguzi { $count } zaidi za kiwango cha hatari hazina jibu mahali fulani.
}
# of 2a0c6f15, reviewed: false
report-verdicts = Maamuzi
# of 4a36f89d, reviewed: false
report-verdict = Uamuzi
# of 1bb8bf6e, reviewed: false
report-verdict-refused = Mstari hausomeki; majibu yanasema una kasoro gani.
# of ee4a048b, reviewed: false
report-by = Kwa { $column }
# of 109df22c, reviewed: false
report-no-place = haikutajwa
# of 94925bed, reviewed: false
report-other-places = nyingine { $count } ndogo zaidi kwa pamoja
# of 4a10cab9, reviewed: false
report-worst = Mibaya kabisa, na la kufanya kwanza
# of 1896ccc6, reviewed: false
report-worst-none = Hakuna ukaguzi wa kiwango cha tahadhari au kibaya zaidi ulioshindwa.
# of 29b44be6, reviewed: false
report-which = Upi
# of 325bab99, reviewed: false
report-row = mstari { $row }
# of 5ccb1f01, reviewed: false
report-first = Kasoro, na la kufanya kwanza
# of 710c9d28, reviewed: false
report-more = { $count ->
    [one] Ukaguzi mmoja zaidi umeshindwa.
   *[other] Kaguzi { $count } zaidi zimeshindwa.
}
# of bc8a4dde, reviewed: false
report-slip = Yaelekea { $member } ni { $value }: namba iliyo kwenye mstari ni sahihi ikisomwa kama { $written }.
# of 4cd88e5c, reviewed: false
report-slip-decimal_point = Yaelekea { $member } ni { $value }: nukta ya desimali imehama.
# of 68d9b71b, reviewed: false
report-slips = Namba ambazo yaelekea ziliandikwa kwa kipimo kingine
# of a3629419, reviewed: false
report-slips-lead = Pale ambapo karibu mistari yote ya safu iko hivyo, huenda safu nzima iko katika kipimo kingine. Tafuta ni kipi kabla ya kuibadilisha na kujibu jedwali tena: kiasi cha wiki au cha mwezi nacho huonekana kama nukta ya desimali iliyosogea.
# of 7d2d6d5a, reviewed: false
report-slips-as = Ikisomwa kama
# of 1d447bfc, reviewed: false
report-slips-point = nukta ya desimali imehama
# of 76026f0d, reviewed: false
report-failed = Kinachoshindwa mara nyingi zaidi
# of 9d60841e, reviewed: false
report-check = Ukaguzi
# of 41f4b598, reviewed: false
report-not-so = Haiko hivyo: { $title }
# of f47f1edc, reviewed: false
report-do = La kufanya
# of 0a6f5912, reviewed: false
report-faults = Mistari isiyosomeka
# of 8e86ab6b, reviewed: false
report-fault = Safu na kosa
# of b8333003, reviewed: false
report-fault-cell_unreadable = si thamani ambayo safu hii inapokea
# of 40582388, reviewed: false
report-fault-date_expected = si siku iliyopo iliyoandikwa kama YYYY-MM-DD
# of ae21539b, reviewed: false
report-fault-list_expected = si orodha ya maneno ambayo safu hii inayajua
# of 3aeaff1c, reviewed: false
report-fault-not_one_of = si neno ambalo safu hii inalijua
# of b43426f0, reviewed: false
report-fault-number_expected = si namba; desimali hufuata nukta
# of f84cbaff, reviewed: false
report-fault-out_of_range = namba iliyo nje ya mipaka ya safu
# of c33221b5, reviewed: false
report-fault-row_unreadable = mstari mzima hausomeki
# of f9a9ad42, reviewed: false
report-fault-text_expected = maandishi ni matupu au marefu mno
# of 5748f768, reviewed: false
report-fault-unit_expected = kipimo si maandishi
# of 0ee7d20c, reviewed: false
report-fault-unknown_id = si kitambulisho cha kitabu cha kanuni
# of 1b4d8f61, reviewed: false
report-fault-unknown_unit = si kipimo ambacho safu hii inakijua
# of 1d0ee030, reviewed: false
report-fault-value_and_unit = si thamani pamoja na kipimo chake
# of 813bb0fa, reviewed: false
report-fault-whole_number_expected = si namba nzima
# of 61973d0e, reviewed: false
report-fault-yes_no_expected = si kweli wala si uongo (true, false)
# of 6fe10037, reviewed: false
report-unstated = Yale ambayo hakuna aliyeyataja
# of 009e7567, reviewed: false
report-unstated-record = { $share } % ya seli za kumbukumbu ni tupu.
# of 4e901740, reviewed: false
report-unstated-facts = Kati ya vipengele vingine vya ukweli { $facts } ambavyo jedwali linaweza kutaja, { $never } havipo kwenye mstari wowote.
# of 3fdc9a58, reviewed: false
report-column = Safu
# of 068109fd, reviewed: false
report-left-out = Haikutajwa
# of 5329f90c, reviewed: false
report-unread = Safu ambazo hazikusomwa
# of dc3f3b77, reviewed: false
report-unread-lead = Hakuna safu inayosomwa kwa majina haya. Tafuta yaliyoandikwa vibaya.
# of 34996ab7, reviewed: false
report-order = Mibaya kabisa hupangwa kwa uamuzi wake, kisha kwa idadi ya kaguzi za viwango vya hatari na onyo zilizoshindwa, kisha kwa uchache wa gesi inayotoa.
