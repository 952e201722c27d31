# of ec77c8a1, reviewed: false
storage-by-hours = heures d'usage
# of 37119e7e, reviewed: false
storage-by-share = part du gaz d'un jour
# of 569344ea, reviewed: false
trade-size = Le métier dimensionne par le fumier et le volume de l'installation, quelle que soit la température ; cette taille garde { $retention } de rétention dans le mois le plus froid à { $temperature }. Une installation plus petite coûte moins et donne moins de gaz avec le même fumier.
# of b4b73bce, reviewed: false
dimensions-statement = Dimensions intérieures pour la planification. Le calcul de la structure, l'excavation et les matériaux relèvent d'un ingénieur ou d'un maçon agréé et de la réglementation locale.
# of 21ecdcbd, reviewed: false
dome-statement = Pour ces dimensions de planification. La pression suit les niveaux du plan réel ; la pression de calcul d'un dôme, son trop-plein et ses essais relèvent d'un ingénieur agréé et de la réglementation locale.
