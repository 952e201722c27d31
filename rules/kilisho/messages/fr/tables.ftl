# of d185b603, reviewed: false
detail-table_content_type = Content-Type doit être l'un de : { $types } ; le texte en UTF-8.
# of 2c3d9263, reviewed: false
detail-table_too_large = Le tableau a plus de { $most } octets.
# of f011db6a, reviewed: false
detail-table_too_long = Le tableau a plus de { $most } lignes.
# of 1e4abb85, reviewed: false
detail-table_stalled = Le reste du tableau n'est pas arrivé.
# of 5c15b544, reviewed: false
detail-table_no_room = Il n'y a plus de place pour ce tableau.
# of 2b6f9ba8, reviewed: false
detail-table_lane_full = Autant de tableaux que le service en accepte sont déjà en traitement.
# of f786ef5f, reviewed: false
detail-table_took_too_long = Le calcul d'une partie du tableau a pris trop de temps.
# of 95055704, reviewed: false
fault-table_empty = le tableau n'a aucune ligne
# of 2db39c9a, reviewed: false
fault-table_not_ndjson = aucune ligne n'est un objet JSON
# of e4b5b11e, reviewed: false
fault-table_not_csv = la première ligne n'est pas un en-tête de CSV en UTF-8
# of 1a3e9ae3, reviewed: false
fault-table_not_arrow = pas un flux Arrow, ou un flux coupé
# of be6cabb7, reviewed: false
fault-table_not_parquet = pas un fichier Parquet, ou un fichier coupé
# of d18a1788, reviewed: false
fault-table_broken = ce que contient le fichier n'est pas ce qu'il dit de lui-même
# of a9a80a2e, reviewed: false
fault-table_explodes = une partie du fichier devient trop grande une fois décompressée ; écrivez-le avec des lots, des groupes de lignes ou des pages plus petits
# of b056a2a9, reviewed: false
fault-table_encoding = une colonne est codée en DELTA_BYTE_ARRAY ; écrivez-la en codage simple ou avec un dictionnaire
# of 6ee00dab, reviewed: false
fault-no_column = aucune colonne n'a le nom d'un membre du relevé d'une installation ni d'un fait ; l'en-tête qui a été lu commence par { $names }
# of 10807d48, reviewed: false
fault-required_column = aucune colonne ne porte ce nom
# of a903268c, reviewed: false
fault-unread_column = aucune colonne n'est lue sous ce nom
# of 931fa63e, reviewed: false
fault-column_twice = deux colonnes contiennent ce membre
# of 9b3d41bd, reviewed: false
fault-column_type = un type que cette colonne ne peut pas avoir
# of 0e30c81e, reviewed: false
fault-unit_of_column = l'unité entre crochets ou parenthèses doit être l'une de : { $units }
# of c23e6769, reviewed: false
fault-column_without_unit = cette colonne n'a pas d'unité
# of f0de6502, reviewed: false
fault-at_line = ligne { $line } : { $fault }
# of 99de5fef, reviewed: false
fault-nearest = { $fault } (le plus proche : { $nearest })
# of d391b501, reviewed: false
fault-cell_unreadable = pas une valeur que cette colonne admet
# of c42be6dc, reviewed: false
fault-cell_number_in_unit = un nombre en { $unit } ; les décimales suivent un point ; laissez la cellule vide s'il n'est pas connu
# of 6958babc, reviewed: false
fault-cell_number = un nombre ; les décimales suivent un point ; laissez la cellule vide s'il n'est pas connu
# of 3c0c0490, reviewed: false
fault-cell_whole_number = un nombre entier ; laissez la cellule vide s'il n'est pas connu
# of 6d5fb74d, reviewed: false
fault-row_denied = contredit ce qui découle du reste de la ligne ; omettez-le ou faites-les concorder
# of ccd798ba, reviewed: false
fault-row_not_an_object = une ligne est un objet dont les colonnes sont les membres
# of 34f26214, reviewed: false
fault-row_too_long = la ligne est trop longue
# of 652b19f7, reviewed: false
fault-row_not_json = pas un objet JSON sur une seule ligne
# of 36f52d40, reviewed: false
fault-row_repeats_member = nomme deux fois un membre
# of eb85fdfa, reviewed: false
fault-row_too_deep = est imbriquée trop profondément
# of 8f8d25ff, reviewed: false
fault-row_not_utf8 = pas du texte en UTF-8
# of 6ffe5bb8, reviewed: false
fault-row_not_csv = un guillemet se trouve là où il ne peut pas y en avoir, ou rien ne le ferme
# of 26915220, reviewed: false
fault-row_width = a { $cells } cellules alors que l'en-tête en a { $columns }
# of 8f8d25ff, reviewed: false
fault-cell_not_utf8 = pas du texte en UTF-8
