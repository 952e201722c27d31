# of ec77c8a1, reviewed: false
storage-by-hours = saa za matumizi
# of 37119e7e, reviewed: false
storage-by-share = sehemu ya gesi ya siku
# of 569344ea, reviewed: false
trade-size = Wataalamu wa kazi hii hupanga ukubwa kwa kinyesi na ujazo wa mtambo bila kujali joto; ukubwa huu unadumisha { $retention } za kukaa katika mwezi wa baridi zaidi kwenye { $temperature }. Mtambo mdogo zaidi una gharama ndogo na hutoa gesi pungufu kwa kinyesi kile kile.
# of b4b73bce, reviewed: false
dimensions-statement = Vipimo vya ndani vya kupangia. Usanifu wa ujenzi, uchimbaji na vifaa ni kazi ya mhandisi au fundi mwashi mwenye leseni, kulingana na kanuni za mahali hapo.
# of 21ecdcbd, reviewed: false
dome-statement = Kwa vipimo hivi vya kupangia. Presha hufuata viwango vya mchoro halisi; presha ya usanifu ya kuba, njia yake ya kufurikia na majaribio yake ni kazi ya mhandisi mwenye leseni, kulingana na kanuni za mahali hapo.
