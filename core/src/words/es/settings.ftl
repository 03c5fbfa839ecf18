# Settings, and everything that is not needed every day.

settings-title = Ajustes
settings-language = Idioma
settings-language-reviewed = Una persona con licencia clínica ha leído sus textos de seguridad.
settings-language-not-reviewed = Ninguna persona con licencia clínica ha leído todavía sus textos de seguridad. Está aquí para probarlo.
settings-numbers = Tamaños y cantidades en Hoy, cuando tu plan los pliega
settings-numbers-folded = Plegados hasta que los abra
settings-numbers-open = Siempre abiertos
settings-lock = Qué abre tu diario
settings-lock-says = Puedes cambiarlo en cualquier momento.
settings-lock-after = Cuándo pedir el código otra vez, si pasaste a otra aplicación
settings-lock-after-hint = Cuando la pantalla se apaga, o el teléfono pone Frond a dormir, se bloquea enseguida.
settings-lock-at-once = Enseguida
settings-lock-minutes = { $count ->
        [one] Después de un minuto
       *[other] Después de { $count } minutos
    }
settings-cues = Sonidos y vibraciones
settings-cues-says = Nada suena ni vibra si no lo eliges. Un tono suave, una vibración corta o una palabra pueden avisar del cambio de la respiración, y del final de una parte mientras practicas.
settings-reminders = Recordatorios
settings-copies = Copias
settings-copies-says = Qué abre tu diario si olvidas la contraseña, y qué queda si este dispositivo se pierde.
settings-shows = Quién podría ver algo
settings-shows-says = Lo que este teléfono aún puede mostrar a quien mire.
settings-time-off = Días libres
settings-time-off-says = Días en los que no se te pide nada.
settings-erase = Borrar
settings-erase-says = Ves qué significa antes de que se borre nada.

more-title = Más
more-diary = Tu diario
more-plan = Tu plan
more-visit = Para tu visita
more-frond = Sobre Frond

action-more = Más
action-settings = Ajustes
action-shows = Qué puede mostrar aún este teléfono
action-first-run = Qué es Frond
