# of f881ab2c, reviewed: false
problem-unauthorized-title = Ufunguo unahitajika
# of e4d49c23, reviewed: false
problem-unauthorized-about = Huduma hii hujibu wanaoonyesha mmoja wa funguo zake za API. Ombi halikuonyesha wowote, au lilionyesha ambao huduma haiujui.
# of e318ffc1, reviewed: false
problem-unauthorized-remedy = Tuma ufunguo kama Authorization: Bearer KEY. Anayeendesha huduma ndiye anayetoa funguo.
# of 802600d1, reviewed: false
problem-too-many-requests-title = Maombi mengi mno
# of 088da87a, reviewed: false
problem-too-many-requests-about = Anayeuliza ametuma maombi mengi kuliko huduma inavyojibu kwa muda huu.
# of bcc2647b, reviewed: false
problem-too-many-requests-remedy = Tuma ombi tena baada ya sekunde nyingi kama kichwa cha Retry-After kinavyosema.
# of 8392c7e1, reviewed: false
problem-took-too-long-title = Jibu lilichukua muda mrefu mno
# of ca127cdb, reviewed: false
problem-took-too-long-about = Kukokotoa jibu kulichukua muda mrefu kuliko huduma inavyoruhusu, hivyo kuliachwa.
# of c382b715, reviewed: false
problem-took-too-long-remedy = Uliza kidogo, kwa mfano utabiri mfupi zaidi au malighafi chache. Kurudia ombi lile lile husaidia tu ikiwa huduma ilikuwa na kazi nyingi.
# of 8212229f, reviewed: false
detail-no_key = Ombi halionyeshi ufunguo wowote.
# of 0e23abc6, reviewed: false
detail-key_not_known = Kichwa cha Authorization hakina ufunguo ambao huduma inaujua.
# of b99b943c, reviewed: false
detail-asks_too_often = Anayeuliza anauliza mara nyingi kuliko huduma inavyojibu.
# of f02a8039, reviewed: false
detail-took_too_long = Jibu liliachwa kwa sababu lilichukua muda mrefu mno.
