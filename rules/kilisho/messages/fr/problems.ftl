# of b86e8f9a, reviewed: false
problem-malformed-json-title = Le corps n'est pas du JSON
# of 6b0ff74a, reviewed: false
problem-malformed-json-about = Le corps n'a pas pu être lu comme un seul document JSON en UTF-8, nomme deux fois un membre ou est imbriqué trop profondément. NaN n'est pas du JSON.
# of feb7cda3, reviewed: false
problem-malformed-json-remedy = Envoyez un seul objet JSON. Le détail dit à quelle ligne et à quelle colonne la lecture s'est arrêtée.
# of d35fe977, reviewed: false
problem-bad-request-title = La requête ne peut pas être lue
# of b0f5bb3e, reviewed: false
problem-bad-request-about = Une partie de la requête autre que son corps enfreint les règles de HTTP.
# of 16c7d817, reviewed: false
problem-bad-request-remedy = Contrôlez l'adresse et les en-têtes.
# of 3d1b4839, reviewed: false
problem-not-found-title = Il n'y a rien à cette adresse
# of 2ba7c49d, reviewed: false
problem-not-found-about = Aucune opération et aucune entrée du référentiel n'a cette adresse.
# of 57f69393, reviewed: false
problem-not-found-remedy = GET / liste les adresses ; l'id d'une entrée est listé par sa collection, et les noms proches sont listés sous errors.
# of f8cf4396, reviewed: false
problem-method-not-allowed-title = Cette adresse n'accepte pas cette méthode
# of 5e471c2f, reviewed: false
problem-method-not-allowed-about = L'adresse existe mais répond à d'autres méthodes.
# of a181dc9f, reviewed: false
problem-method-not-allowed-remedy = Utilisez une méthode que liste l'en-tête Allow.
# of 185c943c, reviewed: false
problem-not-acceptable-title = Aucune représentation ne convient à l'en-tête Accept
# of f4ef8c9b, reviewed: false
problem-not-acceptable-about = L'adresse n'offre aucun des types de média qu'admet l'en-tête Accept.
# of 5601bfcc, reviewed: false
problem-not-acceptable-remedy = Omettez l'en-tête Accept, ou admettez le type de média que nomme le détail.
# of 60641082, reviewed: false
problem-too-large-title = Le corps est trop grand
# of 66f35e78, reviewed: false
problem-too-large-about = Le corps a plus d'octets que le service n'en accepte.
# of f6542635, reviewed: false
problem-too-large-remedy = Demandez pour une seule ferme à la fois et omettez ce qui n'est pas nécessaire.
# of f9dcf530, reviewed: false
problem-unsupported-media-type-about = L'en-tête Content-Type manque ou nomme un autre type ou un autre jeu de caractères que UTF-8, ou le corps est compressé.
# of 4d17e9b3, reviewed: false
problem-invalid-request-title = La requête ne peut pas recevoir de réponse telle quelle
# of 08a167c2, reviewed: false
problem-invalid-request-about = Le corps est du JSON, mais des membres manquent, sont inconnus ou hors de leur sens ; ou un paramètre l'est. Toutes les fautes sont listées.
# of 78dda1e6, reviewed: false
problem-invalid-request-remedy = Parcourez errors : chacune montre sa place (un JSON Pointer, ou le nom du paramètre) et dit ce qui était attendu.
# of 836c1a55, reviewed: false
problem-internal-error-title = Le service a échoué
# of 5a725f49, reviewed: false
problem-internal-error-about = La faute est la nôtre et a été journalisée sous l'id de la requête.
# of 0bd21e75, reviewed: false
problem-internal-error-remedy = Signalez la valeur instance de la réponse à qui exploite le service.
# of c516be78, reviewed: false
problem-not-ready-title = Le service n'est pas prêt
# of 67d97434, reviewed: false
problem-not-ready-about = Le service n'arrive pas à recalculer ses propres exemples et ne doit pas être interrogé.
# of a20267bf, reviewed: false
problem-not-ready-remedy = Réessayez plus tard ; qui exploite le service en trouve la raison dans son journal.
# of 0e223368, reviewed: false
problem-overloaded-title = Trop de requêtes attendent
# of 935580a6, reviewed: false
problem-overloaded-about = Autant de requêtes que le service en accepte attendent déjà. Les questions au long calcul attendent dans une file à part.
# of bcc2647b, reviewed: false
problem-overloaded-remedy = Renvoyez la requête après autant de secondes que le dit l'en-tête Retry-After.
# of 800061a2, reviewed: false
detail-no_address = Aucune opération et aucune page n'a cette adresse.
# of a181dc9f, reviewed: false
detail-use_allowed_method = Utilisez une méthode que liste l'en-tête Allow.
# of 7cd9e30e, reviewed: false
detail-body_too_large = Le corps est plus grand que le service ne l'accepte.
# of 01094191, reviewed: false
detail-failed = Le service a échoué ; la faute est la nôtre et a été journalisée.
# of d2b032d4, reviewed: false
detail-no_problem_kind = Aucun genre de problème n'a ce nom.
# of 97c02a24, reviewed: false
detail-examples_fail = Le service n'arrive pas à recalculer ses exemples de { $names }.
# of a0123967, reviewed: false
detail-lane_full = Autant de requêtes que le service en accepte attendent déjà.
# of 739fdff5, reviewed: false
detail-caller_left = L'appelant est parti pendant que sa requête attendait.
# of f68bf054, reviewed: false
detail-no_entry = La collection n'a aucune entrée avec cet id.
# of e8810cfa, reviewed: false
detail-no_entry_of_collection = pas une entrée de cette collection
# of 74271cfc, reviewed: false
detail-accept_must_admit = L'en-tête Accept doit admettre l'un de : { $types }.
# of 8ccd4f97, reviewed: false
detail-query_does_not_fit = Les paramètres ne conviennent pas à cette adresse.
# of 1823029d, reviewed: false
detail-content_type_json = Content-Type doit être application/json.
# of 5ef579b2, reviewed: false
detail-not_compressed = Le corps ne doit pas être compressé.
# of daeea567, reviewed: false
detail-no_parameter = il n'y a pas de tel paramètre ici
# of 17328cca, reviewed: false
detail-given_twice = donné plus d'une fois
# of 5a0d809d, reviewed: false
detail-most_parameters = { $most } paramètres au plus
# of ed50d401, reviewed: false
detail-yes_or_no = true ou false
# of 0050abae, reviewed: false
detail-faults = { $count ->
    [one] { $count } faute dans le corps.
   *[other] { $count } fautes dans le corps.
}
# of e6975aa3, reviewed: false
detail-faults_first = { $faults } Les { $most } premières sont listées.
# of bfe008f8, reviewed: false
detail-body_repeats_member = Le corps nomme deux fois un membre.
# of 4a9363bf, reviewed: false
detail-body_too_deep = Le corps est imbriqué trop profondément.
# of 60f70692, reviewed: false
detail-body_not_json = Le corps n'est pas un seul document JSON.
# of 8687ce4f, reviewed: false
detail-body_repeats_member_at = Le corps nomme deux fois un membre (ligne { $line }, colonne { $column }).
# of 4069ade0, reviewed: false
detail-body_too_deep_at = Le corps est imbriqué trop profondément (ligne { $line }, colonne { $column }).
# of 357f9a4a, reviewed: false
detail-body_not_json_at = Le corps n'est pas un seul document JSON (ligne { $line }, colonne { $column }).
# of c4bc02ad, reviewed: false
problem-page-status = Statut { $status }
# of f47f1edc, reviewed: false
problem-page-what_to_do = Que faire
# of bf586a64, reviewed: false
problem-request-stalled-title = La requête s'est arrêtée en route
# of da37e42d, reviewed: false
problem-request-stalled-about = Le corps a cessé d'arriver, ou est arrivé plus lentement que le service ne l'attend.
# of 2801167a, reviewed: false
problem-request-stalled-remedy = Renvoyez la requête par une connexion plus stable.
# of 19bb2581, reviewed: false
problem-no-room-title = Le service n'a pas de place pour le tableau
# of f0f51364, reviewed: false
problem-no-room-about = Le dossier où sont gardés les tableaux pendant leur traitement est plein, ou on ne peut pas y écrire.
# of bf1824bc, reviewed: false
problem-no-room-remedy = Envoyez un tableau plus petit, ou le même plus tard ; qui exploite le service peut lui donner plus de place.
# of 59c58373, reviewed: false
problem-unsupported-media-type-title = Le corps n'est pas d'un type accepté ici
# of e8ace79a, reviewed: false
problem-unsupported-media-type-remedy = Envoyez Content-Type: application/json, ou pour un tableau le type que nomme le détail, et le corps tel quel.
