# of f8ac34b7, reviewed: false
detail-leaving = Le service est en cours d'arrêt et ne prend plus de travail ; un autre répond.
