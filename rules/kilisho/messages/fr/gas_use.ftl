# of c960443e, reviewed: false
use-busiest-hour = la plus chargée des heures indiquées
# of 161a820c, reviewed: false
use-all-at-once = tous les appareils à la fois
# of 89bb8a62, reviewed: false
use-cooking-hours = le gaz d'un jour dans les heures habituelles de cuisson
# of e49b04c0, reviewed: false
use-no-pipe-serves = Aucune taille du référentiel ne respecte la limite : raccourcissez le tuyau, posez-en deux, ou brûlez moins à la fois.
# of 12b8b532, reviewed: false
use-pipe-at-least = Au moins : { $size }. Il respecte la limite même au débit le plus haut de la plage ; tout tuyau plus large aussi.
# of b44e3257, reviewed: false
use-hours-unknown = Indiquez les heures d'usage de chaque appareil pour suivre le gaz au long du jour.
# of 9a3b07ae, reviewed: false
use-feed-needed = Avec une alimentation régulière, à 25 °C et 60 jours de rétention ; un digesteur plus froid demande davantage. Dimensionnez le digesteur pour le savoir.
# of d3bdb65e, reviewed: false
use-for-cooking = Cuisson
# of fd1f32a1, reviewed: false
use-for-heating = Chauffage
# of 13a5aed1, reviewed: false
use-for-refrigeration = Réfrigération
# of 07607d60, reviewed: false
use-for-lighting = Éclairage
# of fc22a194, reviewed: false
use-for-shaft-power = Force motrice
# of a8b41baa, reviewed: false
use-for-electricity = Électricité
# of 171af495, reviewed: false
use-for-other = Autres usages
# of 95c849dc, reviewed: false
use-not-for-cooking = Gaz pour d'autres usages que la cuisson : { $gas }. Il ne compte pas à la place des combustibles de cuisson.
# of c454c857, reviewed: false
use-cooking-counts = Il compte à la place des combustibles de cuisson.
# of 0583379e, reviewed: false
use-electricity-counts = Il ne remplace aucun combustible de cuisson. L'électricité qu'on en produit compte à la place d'autant d'électricité, là où celle-ci est parmi les combustibles.
# of 49de56c8, reviewed: false
use-electricity-uncounted = Il ne remplace aucun combustible de cuisson. L'électricité qu'on en produit ne compte pour rien, car aucune électricité n'est parmi les combustibles : indiquez-la si elle est achetée ou produite à présent.
# of 78a69778, reviewed: false
use-light-uncounted = Il ne remplace aucun combustible de cuisson. Le pétrole lampant ou les bougies qu'il peut épargner ne sont pas comptés : le référentiel n'a pas de chiffres pour comparer les lampes par leur lumière.
# of c149c801, reviewed: false
use-other-uncounted = Il ne remplace aucun combustible de cuisson. Ce qu'il peut épargner autrement n'est pas compté : le référentiel n'a pas de chiffres pour le comparer.
# of 08ac7a42, reviewed: false
use-saves = Le combustible économisé pèse plus que le méthane perdu, sur toute la plage.
# of 2316b8bb, reviewed: false
use-harms = Le méthane perdu réchauffe plus que ne l'aurait fait le combustible économisé : trouvez les fuites et utilisez tout le gaz.
# of c35abb62, reviewed: false
use-uncertain = Les fuites et les rejets peuvent annuler ce que gagne le combustible économisé : seule une installation étanche dont tout le gaz est utilisé aide à coup sûr.
# of 98b6052d, reviewed: false
use-saves-with-manure = Le combustible économisé et le méthane que le fumier n'émet plus pèsent plus que le méthane perdu, sur toute la plage.
# of db26522d, reviewed: false
use-harms-with-manure = Le méthane perdu réchauffe plus que ne l'auraient fait le combustible économisé et le méthane du fumier : trouvez les fuites et utilisez tout le gaz.
# of 6d727e48, reviewed: false
use-uncertain-with-manure = Les fuites et les rejets peuvent annuler ce que gagnent le combustible économisé et le fumier : seule une installation étanche dont tout le gaz est utilisé aide à coup sûr.
# of faacd700, reviewed: false
use-left-out-fire = Le méthane, le protoxyde d'azote et la suie du feu remplacé, et la fabrication du charbon de bois : ils augmenteraient ce qui est économisé.
# of c489cb1b, reviewed: false
use-left-out-uses = Ce qu'épargne le gaz qui ne sert pas à la cuisson, comme le pétrole lampant, le carburant d'un moteur ou l'électricité : il augmenterait ce qui est économisé.
# of fca78d09, reviewed: false
use-left-out-manure = Le méthane que le fumier aurait émis en tas ou au champ, et que le digesteur peut épargner.
# of ab6ef82e, reviewed: false
use-left-out-nitrous-oxide = Le protoxyde d'azote que le fumier aurait émis tel qu'il était gardé auparavant.
# of d8d72531, reviewed: false
use-left-out-slip = Le méthane qui passe imbrûlé par le brûleur, ou qui sort du digestat après qu'il a quitté l'installation.
# of 210cb2e1, reviewed: false
use-left-out-fertiliser = L'engrais que le digestat remplace, et la construction de l'installation.
# of 66af6b81, reviewed: false
use-store-unknown = Personne n'a indiqué la réserve : elle est prise aussi grande que cet usage le demande.
# of 6e755581, reviewed: false
use-pipe-material-unknown = Personne ne l'a indiqué ; c'est le plus rugueux.
# of b6222f78, reviewed: false
use-feed-unknown = Personne n'a dit ce qui serait donné comme alimentation.
# of 87fe6418, reviewed: false
use-climate-unknown = Personne n'a indiqué la température moyenne de l'air : entre frais, tempéré et chaud, on prend frais, où le fumier émet le moins de méthane.
