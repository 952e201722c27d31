# of b86e8f9a, reviewed: false
problem-malformed-json-title = Mwili wa ombi si JSON
# of 6b0ff74a, reviewed: false
problem-malformed-json-about = Mwili haukuweza kusomwa kama hati moja ya JSON kwa UTF-8, unataja sehemu mara mbili, au umepangwa kwa kina kupita kiasi. NaN si JSON.
# of feb7cda3, reviewed: false
problem-malformed-json-remedy = Tuma kitu kimoja cha JSON. Maelezo yanasema usomaji ulisimama kwenye mstari na safu gani.
# of d35fe977, reviewed: false
problem-bad-request-title = Ombi haliwezi kusomwa
# of b0f5bb3e, reviewed: false
problem-bad-request-about = Sehemu ya ombi isiyo mwili wake inavunja kanuni za HTTP.
# of 16c7d817, reviewed: false
problem-bad-request-remedy = Angalia anwani na vichwa.
# of 3d1b4839, reviewed: false
problem-not-found-title = Hakuna kitu kwenye anwani hii
# of 2ba7c49d, reviewed: false
problem-not-found-about = Hakuna operesheni wala ingizo la kitabu cha kanuni lenye anwani hii.
# of 57f69393, reviewed: false
problem-not-found-remedy = GET / inaorodhesha anwani; id ya ingizo imeorodheshwa na mkusanyiko wake, na majina yaliyo karibu yameorodheshwa chini ya errors.
# of f8cf4396, reviewed: false
problem-method-not-allowed-title = Anwani hii haikubali njia hii
# of 5e471c2f, reviewed: false
problem-method-not-allowed-about = Anwani ipo lakini hujibu njia nyingine.
# of a181dc9f, reviewed: false
problem-method-not-allowed-remedy = Tumia njia ambayo kichwa cha Allow kinaorodhesha.
# of 185c943c, reviewed: false
problem-not-acceptable-title = Hakuna uwakilishi unaolingana na kichwa cha Accept
# of f4ef8c9b, reviewed: false
problem-not-acceptable-about = Anwani haitoi aina yoyote ya faili ambayo kichwa cha Accept kinaruhusu.
# of 5601bfcc, reviewed: false
problem-not-acceptable-remedy = Acha kichwa cha Accept, au ruhusu aina ya faili inayotajwa kwenye maelezo.
# of 60641082, reviewed: false
problem-too-large-title = Mwili ni mkubwa mno
# of 66f35e78, reviewed: false
problem-too-large-about = Mwili una baiti nyingi kuliko huduma inavyokubali.
# of f6542635, reviewed: false
problem-too-large-remedy = Uliza kuhusu shamba moja kwa wakati na acha kisichohitajika.
# of f9dcf530, reviewed: false
problem-unsupported-media-type-about = Kichwa cha Content-Type hakipo au kinataja aina nyingine, au herufi nyingine kuliko UTF-8, au mwili umebanwa.
# of 4d17e9b3, reviewed: false
problem-invalid-request-title = Ombi haliwezi kujibiwa jinsi lilivyo
# of 08a167c2, reviewed: false
problem-invalid-request-about = Mwili ni JSON, lakini sehemu zinakosekana, hazijulikani au ziko nje ya maana yake; au kigezo cha ulizo kiko hivyo. Makosa yote yameorodheshwa.
# of 78dda1e6, reviewed: false
problem-invalid-request-remedy = Pitia errors: kila moja inaonyesha mahali pake (JSON Pointer, au jina la kigezo), na inasema nini kilitarajiwa.
# of 836c1a55, reviewed: false
problem-internal-error-title = Huduma imeshindwa
# of 5a725f49, reviewed: false
problem-internal-error-about = Kosa ni letu na limeandikwa kwenye kumbukumbu chini ya id ya ombi.
# of 0bd21e75, reviewed: false
problem-internal-error-remedy = Mjulishe anayeendesha huduma thamani ya instance ya jibu.
# of c516be78, reviewed: false
problem-not-ready-title = Huduma haiko tayari
# of 67d97434, reviewed: false
problem-not-ready-about = Huduma haiwezi kukokotoa upya mifano yake yenyewe na haipaswi kuulizwa.
# of a20267bf, reviewed: false
problem-not-ready-remedy = Jaribu tena baadaye; anayeendesha huduma atapata sababu kwenye kumbukumbu zake.
# of 0e223368, reviewed: false
problem-overloaded-title = Maombi mengi mno yanasubiri
# of 935580a6, reviewed: false
problem-overloaded-about = Tayari yanasubiri maombi mengi kadiri huduma inavyokubali. Maswali ya kukokotoa kwa muda mrefu husubiri katika foleni yao wenyewe.
# of bcc2647b, reviewed: false
problem-overloaded-remedy = Tuma ombi tena baada ya sekunde nyingi kama kichwa cha Retry-After kinavyosema.
# of 800061a2, reviewed: false
detail-no_address = Hakuna operesheni wala ukurasa wenye anwani hii.
# of a181dc9f, reviewed: false
detail-use_allowed_method = Tumia njia ambayo kichwa cha Allow kinaorodhesha.
# of 7cd9e30e, reviewed: false
detail-body_too_large = Mwili ni mkubwa kuliko huduma inavyokubali.
# of 01094191, reviewed: false
detail-failed = Huduma imeshindwa; kosa ni letu na limeandikwa kwenye kumbukumbu.
# of d2b032d4, reviewed: false
detail-no_problem_kind = Hakuna aina ya tatizo yenye jina hili.
# of 97c02a24, reviewed: false
detail-examples_fail = Huduma haiwezi kukokotoa upya mifano yake ya { $names }.
# of a0123967, reviewed: false
detail-lane_full = Tayari yanasubiri maombi mengi kadiri huduma inavyokubali.
# of 739fdff5, reviewed: false
detail-caller_left = Aliyeuliza aliondoka ombi lake lilipokuwa likisubiri.
# of f68bf054, reviewed: false
detail-no_entry = Mkusanyiko hauna ingizo lenye id hii.
# of e8810cfa, reviewed: false
detail-no_entry_of_collection = si ingizo la mkusanyiko huu
# of 74271cfc, reviewed: false
detail-accept_must_admit = Kichwa cha Accept lazima kiruhusu moja kati ya: { $types }.
# of 8ccd4f97, reviewed: false
detail-query_does_not_fit = Ulizo halilingani na anwani hii.
# of 1823029d, reviewed: false
detail-content_type_json = Content-Type lazima iwe application/json.
# of 5ef579b2, reviewed: false
detail-not_compressed = Mwili lazima usibanwe.
# of daeea567, reviewed: false
detail-no_parameter = hakuna kigezo cha ulizo kama hicho hapa
# of 17328cca, reviewed: false
detail-given_twice = kimetolewa zaidi ya mara moja
# of 5a0d809d, reviewed: false
detail-most_parameters = vigezo vya ulizo visivyozidi { $most }
# of ed50d401, reviewed: false
detail-yes_or_no = true au false
# of 0050abae, reviewed: false
detail-faults = { $count ->
    [one] Kosa { $count } kwenye mwili.
   *[other] Makosa { $count } kwenye mwili.
}
# of e6975aa3, reviewed: false
detail-faults_first = { $faults } Ya kwanza { $most } yameorodheshwa.
# of bfe008f8, reviewed: false
detail-body_repeats_member = Mwili unataja sehemu mara mbili.
# of 4a9363bf, reviewed: false
detail-body_too_deep = Mwili umepangwa kwa kina kupita kiasi.
# of 60f70692, reviewed: false
detail-body_not_json = Mwili si hati moja ya JSON.
# of 8687ce4f, reviewed: false
detail-body_repeats_member_at = Mwili unataja sehemu mara mbili (mstari { $line }, safu { $column }).
# of 4069ade0, reviewed: false
detail-body_too_deep_at = Mwili umepangwa kwa kina kupita kiasi (mstari { $line }, safu { $column }).
# of 357f9a4a, reviewed: false
detail-body_not_json_at = Mwili si hati moja ya JSON (mstari { $line }, safu { $column }).
# of c4bc02ad, reviewed: false
problem-page-status = Hali { $status }
# of f47f1edc, reviewed: false
problem-page-what_to_do = La kufanya
# of bf586a64, reviewed: false
problem-request-stalled-title = Ombi limekwama
# of da37e42d, reviewed: false
problem-request-stalled-about = Mwili uliacha kufika, au ulifika polepole kuliko huduma inavyosubiri.
# of 2801167a, reviewed: false
problem-request-stalled-remedy = Tuma ombi tena kupitia muunganisho ulio imara zaidi.
# of 19bb2581, reviewed: false
problem-no-room-title = Huduma haina nafasi kwa jedwali
# of f0f51364, reviewed: false
problem-no-room-about = Folda ambamo majedwali huwekwa yanapofanyiwa kazi imejaa au haiwezi kuandikwa.
# of bf1824bc, reviewed: false
problem-no-room-remedy = Tuma jedwali dogo zaidi, au hilo hilo baadaye; anayeendesha huduma anaweza kuipa nafasi zaidi.
# of 59c58373, reviewed: false
problem-unsupported-media-type-title = Mwili si wa aina inayopokelewa hapa
# of e8ace79a, reviewed: false
problem-unsupported-media-type-remedy = Tuma Content-Type: application/json, au kwa jedwali aina inayotajwa kwenye maelezo, na mwili jinsi ulivyo.
