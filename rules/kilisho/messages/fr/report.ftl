# of 57d30a6a, reviewed: false
report-title = Rapport sur un parc de digesteurs
# of 784aeef6, reviewed: false
report-installations = { $count ->
    [one] { $total } installation
   *[other] { $total } installations
}
# of ad2cc12e, reviewed: false
report-invented = Ces installations sont inventées ; aucune ligne n'est réelle.
# of 7a971a11, reviewed: false
report-invented-some = { $total } de ces installations sont inventées ; aucune d'elles n'est réelle.
# of 04e52f1f, reviewed: false
report-what = Ce qui a été constaté
# of 37bac495, reviewed: false
report-count = Nombre
# of 29887a5f, reviewed: false
report-share = Part
# of b8cafa41, reviewed: false
report-dangerous = Dangereuses
# of 6c10b73f, reviewed: false
report-doubtful = Nombre qui ne peut pas être juste
# of fddcb6ed, reviewed: false
report-mis_sized = Mauvaise taille
# of d8a80393, reviewed: false
report-starved = Sous-alimentées
# of ab65ba09, reviewed: false
report-fed_wrongly = Mal alimentées autrement
# of edad8105, reviewed: false
report-underperforming = Trop peu de gaz
# of 497d07e8, reviewed: false
report-unknown = Pas assez de données
# of 42e3a5bb, reviewed: false
report-refused = Ne peut pas être lue
# of 4fa61d63, reviewed: false
report-sound = Saines sur tout ce qui est demandé
# of 6152ad09, reviewed: false
report-several = Une installation peut figurer dans plusieurs de ces lignes.
# of e77ab7c5, reviewed: false
report-dangers = Allez-y d'abord : un contrôle de niveau danger a échoué
# of 07298b3a, reviewed: false
report-dangers-none = Aucun contrôle de niveau danger n'a échoué d'après ce qui a été indiqué. Cela ne veut pas dire que c'est sûr : voyez ce que personne n'a indiqué.
# of 96a91c4f, reviewed: false
report-dangers-none-read = Aucun contrôle de niveau danger n'a échoué dans les lignes qui ont pu être lues. Cela ne veut pas dire que c'est sûr : voyez ce que personne n'a indiqué.
# of 34753ae9, reviewed: false
report-unjudged =
    { $count ->
        [one] Une ligne n'a pas pu être lue : ce qu'elle indique sur les dangers n'a pas été jugé.
       *[other] { $total } lignes n'ont pas pu être lues : ce qu'elles indiquent sur les dangers n'a pas été jugé.
    }
# of 988481e1, reviewed: false
report-open = Personne n'a écarté ces dangers
# of 95b6e636, reviewed: false
report-open-lead = Dans { $total } des { $rows } installations, au moins un contrôle de niveau danger n'a pas de réponse. Tant que personne n'a regardé, aucune d'elles n'est sûre.
# of 424f0420, reviewed: false
report-open-one = { $check } : inconnu pour { $share }
# of 02ba30dc, reviewed: false
report-open-others = { $count ->
    [one] { $count } autre contrôle de niveau danger est sans réponse quelque part.
   *[other] { $count } autres contrôles de niveau danger sont sans réponse quelque part.
}
# of 2a0c6f15, reviewed: false
report-verdicts = Verdicts
# of 4a36f89d, reviewed: false
report-verdict = Verdict
# of 1bb8bf6e, reviewed: false
report-verdict-refused = La ligne ne peut pas être lue ; les réponses disent ce qui n'y va pas.
# of ee4a048b, reviewed: false
report-by = Par { $column }
# of 109df22c, reviewed: false
report-no-place = non indiqué
# of 94925bed, reviewed: false
report-other-places = { $count } plus petits ensemble
# of 4a10cab9, reviewed: false
report-worst = Les pires, et que faire d'abord
# of 1896ccc6, reviewed: false
report-worst-none = Aucun contrôle de niveau attention ou plus grave n'a échoué.
# of 29b44be6, reviewed: false
report-which = Laquelle
# of 325bab99, reviewed: false
report-row = ligne { $row }
# of 5ccb1f01, reviewed: false
report-first = Ce qui ne va pas, et que faire d'abord
# of 710c9d28, reviewed: false
report-more = { $count ->
    [one] { $count } autre contrôle a échoué.
   *[other] { $count } autres contrôles ont échoué.
}
# of bc8a4dde, reviewed: false
report-slip = { $member } vaut probablement { $value } : le nombre de la ligne est juste si on le lit { $written }.
# of 4cd88e5c, reviewed: false
report-slip-decimal_point = { $member } vaut probablement { $value } : sa virgule décimale est déplacée.
# of 68d9b71b, reviewed: false
report-slips = Nombres probablement écrits dans une autre unité
# of a3629419, reviewed: false
report-slips-lead = Là où c'est le cas de presque toutes les lignes d'une colonne, toute la colonne est probablement dans une autre unité. Cherchez laquelle avant de la convertir et de refaire répondre au tableau : une quantité par semaine ou par mois ressemble aussi à une virgule décalée.
# of 7d2d6d5a, reviewed: false
report-slips-as = Lu comme
# of 1d447bfc, reviewed: false
report-slips-point = virgule décimale déplacée
# of 76026f0d, reviewed: false
report-failed = Ce qui échoue le plus souvent
# of 9d60841e, reviewed: false
report-check = Contrôle
# of 41f4b598, reviewed: false
report-not-so = Ce n'est pas le cas : { $title }
# of f47f1edc, reviewed: false
report-do = Que faire
# of 0a6f5912, reviewed: false
report-faults = Lignes qui ne peuvent pas être lues
# of 8e86ab6b, reviewed: false
report-fault = Colonne et faute
# of b8333003, reviewed: false
report-fault-cell_unreadable = pas une valeur que la colonne accepte
# of 40582388, reviewed: false
report-fault-date_expected = pas un jour existant écrit YYYY-MM-DD
# of ae21539b, reviewed: false
report-fault-list_expected = pas une liste de mots que la colonne connaît
# of 3aeaff1c, reviewed: false
report-fault-not_one_of = pas un mot que la colonne connaît
# of b43426f0, reviewed: false
report-fault-number_expected = pas un nombre ; les décimales suivent un point
# of f84cbaff, reviewed: false
report-fault-out_of_range = un nombre hors des limites de la colonne
# of c33221b5, reviewed: false
report-fault-row_unreadable = la ligne entière est illisible
# of f9a9ad42, reviewed: false
report-fault-text_expected = texte vide ou trop long
# of 5748f768, reviewed: false
report-fault-unit_expected = l'unité n'est pas un texte
# of 0ee7d20c, reviewed: false
report-fault-unknown_id = pas un identifiant du référentiel
# of 1b4d8f61, reviewed: false
report-fault-unknown_unit = pas une unité que la colonne connaît
# of 1d0ee030, reviewed: false
report-fault-value_and_unit = pas une valeur avec son unité
# of 813bb0fa, reviewed: false
report-fault-whole_number_expected = pas un nombre entier
# of 61973d0e, reviewed: false
report-fault-yes_no_expected = ni vrai ni faux (true, false)
# of 6fe10037, reviewed: false
report-unstated = Ce que personne n'a indiqué
# of 009e7567, reviewed: false
report-unstated-record = { $share } % des cellules du relevé sont vides.
# of 4e901740, reviewed: false
report-unstated-facts = Sur { $facts } autres faits qu'un tableau peut indiquer, { $never } ne figurent dans aucune ligne.
# of 3fdc9a58, reviewed: false
report-column = Colonne
# of 068109fd, reviewed: false
report-left-out = Non indiqué
# of 5329f90c, reviewed: false
report-unread = Colonnes qui n'ont pas été lues
# of dc3f3b77, reviewed: false
report-unread-lead = Aucune colonne ne se lit sous ces noms. Cherchez ceux qui sont mal écrits.
# of 34996ab7, reviewed: false
report-order = Les pires se reconnaissent à leur verdict, puis au nombre de contrôles de niveau danger et de niveau avertissement qui ont échoué, puis au peu de gaz qu'elles donnent.
