# of 4ffce4f8, reviewed: false
values-agree = Les valeurs indiquées concordent entre elles
# of 86e199f9, reviewed: false
values-agree-why = Elle découle de { $inputs }, qui disent autre chose ; la valeur indiquée a été utilisée.
# of 169e6a56, reviewed: false
values-agree-do = Mesurez de nouveau et faites attention à l'unité : des litres pour des mètres cubes, c'est l'erreur habituelle.
# of cd7223e4, reviewed: false
safety-stop = Arrêtez. Non rempli : { $titles }.
# of 81f4652a, reviewed: false
safety-act-at-once = Agissez tout de suite. Non rempli : { $titles }.
# of 86a0af94, reviewed: false
safety-more-unanswered = { $count ->
    [one] { $count } autre contrôle de niveau danger est sans réponse.
   *[other] { $count } autres contrôles de niveau danger sont sans réponse.
}
# of afe94683, reviewed: false
safety-unanswered = { $count ->
    [one] { $count } contrôle de niveau danger est sans réponse : on ne peut donc pas dire que c'est sûr.
   *[other] { $count } contrôles de niveau danger sont sans réponse : on ne peut donc pas dire que c'est sûr.
}
# of ca9d4fa1, reviewed: false
safety-lesser-failed = { $count ->
    [one] { $count } contrôle de moindre niveau n'est pas rempli.
   *[other] { $count } contrôles de moindre niveau ne sont pas remplis.
}
# of ae73d23e, reviewed: false
safety-failed = { $count ->
    [one] { $count } contrôle n'est pas rempli, il n'est pas de niveau danger.
   *[other] { $count } contrôles ne sont pas remplis, aucun de niveau danger.
}
# of 4d56dfa7, reviewed: false
safety-clear = Aucun contrôle n'a échoué sur ce qui a été indiqué.
# of 7aa38b21, reviewed: false
safety-statement = Un verdict favorable signifie qu'aucun contrôle n'a échoué sur ce qui a été indiqué, non que l'installation est sûre : la réglementation locale et les professionnels agréés décident.
