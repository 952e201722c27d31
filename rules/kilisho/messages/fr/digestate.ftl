# of 4545f96b, reviewed: false
digestate-balance = La masse de substrat qui entre est la masse de digestat et de gaz qui sort ; ce qui est devenu gaz manque dans la matière organique. Le sable qui se dépose est compté avec le digestat : il sort quand on vide le digesteur.
# of fe71bfaf, reviewed: false
digestate-nitrogen = Tout l'azote donné sort avec le digestat : la digestion en transforme une partie en ammonium, que les plantes prennent aussitôt et que l'air emporte aussi facilement. Ce que perdent la réserve et le champ est de l'ammoniac ; ce qui est lié à la matière organique vient au fil des ans.
# of 2208941c, reviewed: false
digestate-phosphorus = Tout le phosphore donné sort avec le digestat, sauf ce qui se dépose avec la boue et sort quand on la retire.
# of b9c216c0, reviewed: false
digestate-potassium = Tout le potassium donné reste dissous et sort avec le digestat ; une réserve ouverte ou qui fuit le laisse partir.
# of 095ed5ce, reviewed: false
digestate-nutrient-unknown = Non indiqué : personne ne sait combien ces substrats en contiennent. Indiquez-le d'après le chiffre d'un laboratoire.
# of 4fcfa53e, reviewed: false
digestate-fertiliser = Engrais acheté qui apporte l'azote que les plantes trouvent la première année, et le phosphore et le potassium en entier. Le digestat apporte en outre de la matière organique, ce qu'aucun engrais ne fait.
# of 290e1409, reviewed: false
digestate-limit-elsewhere = Personne n'a indiqué de limite locale. Ceci est une règle courante ailleurs, montrée comme repère et non appliquée : les règles locales d'abord.
# of f187821e, reviewed: false
digestate-limit-stated = La limite indiquée est respectée : aucun champ ne reçoit davantage.
# of f9282b24, reviewed: false
digestate-not-safe = Un digesteur familial n'hygiénise pas, quelles que soient sa température et sa rétention : une partie des germes et des œufs de vers survit. Les délais d'attente réduisent le risque et ne l'ôtent pas ; lavez, épluchez et cuisez ce qui pousse sur le sol fertilisé.
# of 00abdbd9, reviewed: false
digestate-excreta-first = Avec des excréments humains dans l'alimentation, gardez-le d'abord aussi longtemps qu'il est dit ici, et tenez-le à l'écart de tout ce qui se mange cru.
# of 66f16f64, reviewed: false
digestate-waiting = Du dernier digestat à la récolte, à la coupe ou à la pâture ; le plus long délai que demande un contrôle du référentiel. Les règles locales d'abord.
# of 5b0559ca, reviewed: false
digestate-store = Parois droites ; une fosse à talus demande plus de place au bord. La pluie qui tombe dans une réserve ouverte s'ajoute et ce qui s'évapore se retranche : ni l'une ni l'autre n'est comptée. La réserve doit être étanche, se trouver en aval des puits, et être couverte ou clôturée pour qu'aucun enfant ni aucun animal n'y tombe.
# of 699d607e, reviewed: false
digestate-store-overflows = La réserve existante déborde avant le prochain épandage : épandez plus tôt sur ce qui pousse, ou construisez-en une plus grande.
# of 842d8603, reviewed: false
digestate-store-unknown = Personne n'a dit comment le digestat est gardé jusqu'à l'épandage.
# of 5031e54c, reviewed: false
digestate-spreading-unknown = Personne n'a dit comment le digestat est épandu.
# of f2bff4c5, reviewed: false
digestate-urine-unknown = L'urine n'a pas été indiquée ; celle qui est mélangée apporte plus d'azote et de potassium.
