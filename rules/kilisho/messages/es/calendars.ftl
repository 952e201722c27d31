# of 3e955a9d, reviewed: false
calendar-event-of-digester = { $event }, biodigestor { $digester }
# of c9c794ca, reviewed: false
calendar-event-at-farm = { $event } - { $farm }
# of c7e79a60, reviewed: false
calendar-times-a-day = { $times } veces al día.
# of 4dd2a07c, reviewed: false
calendar-every = Cada { $rhythm }; el calendario muestra días enteros.
# of 1407b423, reviewed: false
calendar-caution = { $signal }: { $text }
