# of f881ab2c, reviewed: false
problem-unauthorized-title = Il faut une clé
# of e4d49c23, reviewed: false
problem-unauthorized-about = Ce service répond à ceux qui montrent l'une de ses clés d'API. La requête n'en a montré aucune, ou une que le service ne connaît pas.
# of e318ffc1, reviewed: false
problem-unauthorized-remedy = Envoyez la clé sous la forme Authorization: Bearer KEY. Qui exploite le service remet les clés.
# of 802600d1, reviewed: false
problem-too-many-requests-title = Trop de requêtes
# of 088da87a, reviewed: false
problem-too-many-requests-about = L'appelant a envoyé plus de requêtes que le service n'en traite en ce temps.
# of bcc2647b, reviewed: false
problem-too-many-requests-remedy = Renvoyez la requête après autant de secondes que le dit l'en-tête Retry-After.
# of 8392c7e1, reviewed: false
problem-took-too-long-title = La réponse a pris trop de temps
# of ca127cdb, reviewed: false
problem-took-too-long-about = Le calcul de la réponse a pris plus de temps que le service n'en accorde, il a donc été abandonné.
# of c382b715, reviewed: false
problem-took-too-long-remedy = Demandez moins, par exemple une prévision plus courte ou moins de substrats. Répéter la même requête n'aide que si le service était occupé.
# of 8212229f, reviewed: false
detail-no_key = La requête ne montre aucune clé.
# of 0e23abc6, reviewed: false
detail-key_not_known = L'en-tête Authorization ne contient aucune clé que le service connaisse.
# of b99b943c, reviewed: false
detail-asks_too_often = Cet appelant demande plus souvent que le service ne répond.
# of f02a8039, reviewed: false
detail-took_too_long = La réponse a été abandonnée parce qu'elle a pris trop de temps.
