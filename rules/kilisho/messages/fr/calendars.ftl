# of 3e955a9d, reviewed: false
calendar-event-of-digester = { $event }, digesteur { $digester }
# of c9c794ca, reviewed: false
calendar-event-at-farm = { $event } - { $farm }
# of c7e79a60, reviewed: false
calendar-times-a-day = { $times } fois par jour.
# of 4dd2a07c, reviewed: false
calendar-every = Tous les { $rhythm } ; le calendrier montre des jours entiers.
# of 1407b423, reviewed: false
calendar-caution = { $signal } : { $text }
