# of f8ac34b7, reviewed: false
detail-leaving = El servicio se está deteniendo y no toma trabajo nuevo; otro responde.
