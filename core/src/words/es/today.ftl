# What today asks, what was written, and the plan in words.

today-title = Hoy
today-read-only = Ahora mismo el diario solo se puede leer. Lo que escribiste está ahí. Libera algo de espacio en el dispositivo y ábrelo otra vez.
today-missing = { $count ->
        [one] Puede faltar una anotación anterior. Díselo a tu especialista en la próxima conversación; hasta entonces tu plan se queda en este paso.
       *[other] Pueden faltar { $count } anotaciones anteriores. Díselo a tu especialista en la próxima conversación; hasta entonces tu plan se queda en este paso.
    }
today-paused = Los dilatadores están en pausa hasta que hayas hablado con alguien.
today-clock = ¿Es { $date }, { $when }? El reloj de este dispositivo puede estar mal. Si lo está, pon primero ese reloj en hora y vuelve.
today-confirm-step = { $step }: ¿es esto lo que usas ahora?
today-review = Ya tocaba revisar tu plan. Pide una visita; hasta entonces sigue como está.
today-time-off = Estás en días libres. Hoy no se te pide nada.
today-no-programme = Todavía no hay un plan. Puedes respirar y anotarlo; Frond no sugiere nada sin el plan de tu especialista.
today-enough-for-today = Has hecho lo máximo que el plan pide para un día. Descansar es parte del plan.
today-done-today = Hecho hoy.
today-rest-day = Un día de descanso en tu plan.
today-days-this-week = { $days ->
        [one] Práctica en { $days } día de esta semana.
       *[other] Práctica en { $days } días de esta semana.
    }
today-weekly = { $times ->
        [one] { $times } vez por semana
       *[other] { $times } veces por semana
    }
today-weekly-span = de { $least } a { $most } veces por semana
today-enough = ¿No te apetece? Hoy basta con respirar.
today-nothing-now = No hagas nada más ahora. Mira a quién llamar.
today-look-forward = Te hace ilusión: { $what }

entries-title = Lo que escribiste
entries-empty = Todavía nada. Aquí estará tu primera sesión.
entries-struck = Dejado fuera
entries-corrected = Corregido
entries-written-later = Escrito el { $date }
entries-session = { $what }, { $minutes ->
        [one] { $minutes } minuto
       *[other] { $minutes } minutos
    }, { $ended }, { $peak }
entries-finished = terminada
entries-stopped = parada antes
entries-could-not-start = no se pudo empezar
entries-peak = molestia más alta { $number }
entries-unrated = sin valorar
entries-step-change = Otro paso
entries-step-confirmed = Paso confirmado
entries-programme = Plan aceptado, revisión { $revision }
entries-signs = Anotado: { $signs }
entries-spoke = Conversación con { $with }
entries-screening = Preguntas sobre cómo estás, contestadas
entries-feels-ready = A la pregunta de probar el paso siguiente: prefiero no decirlo
entries-ready = Me gustaría probar el paso siguiente
entries-not-yet = Todavía no el paso siguiente
entries-suggestion = Mirado lo que dice el plan
entries-chose-try = Elegido: probarlo
entries-chose-stay = Elegido: quedarme
entries-stay-here = Elegido cómo continuar
entries-time-off = Días libres: del { $from } al { $to }
entries-look-forward = Algo que hace ilusión: { $what }
entries-function = { $activity }: { $number } de 10
entries-goal = { $goal }: { $reached }
entries-question = Para la visita: { $text }
entries-settled-yes = Se había calmado
entries-settled-not-yet = Todavía no se había calmado
entries-settled-unsaid = A la pregunta de si se había calmado: prefiero no decirlo
entries-settings = Ajustes cambiados
entries-time-confirmed = Hora confirmada
entries-clock = El reloj podía estar mal
entries-missing = { $count ->
        [one] Aquí falta una anotación
       *[other] Aquí faltan { $count } anotaciones
    }
entries-missing-between = { $count ->
        [one] Falta una anotación entre { $after } y { $before }
       *[other] Faltan { $count } anotaciones entre { $after } y { $before }
    }
entries-missing-after = { $count ->
        [one] Falta una anotación después de { $after }
       *[other] Faltan { $count } anotaciones después de { $after }
    }
entries-missing-before = { $count ->
        [one] Falta una anotación antes de { $before }
       *[other] Faltan { $count } anotaciones antes de { $before }
    }
entries-restored = Recuperado de una copia
entries-copy-made = Se hizo una copia para otro sitio
entries-erased = Borrado

plan-title = Tu plan en palabras

kept-title = Guardado.
kept-session = Bien cuidado. Lo demás puede esperar.
kept-stopped = Paraste, y eso siempre está bien. Hoy no se te pide nada más.
kept-contact = Si quieres hablar: { $name }, { $phone } ({ $hours }).
kept-strike = Queda fuera desde ahora. Lo sigues viendo en lo que escribiste.
kept-correction = La corrección cuenta desde ahora. La primera versión sigue a tu vista.
kept-step = Este paso se usa desde ahora.
kept-programme = Este plan se usa desde ahora.
kept-spoke = Qué bien que hablaste con alguien.
kept-question = Estará con tus preguntas para la visita.

today-practice-waits = Una práctica tuya espera a que la anotes o la continúes.
entries-hold-conditions = Preguntas sobre aguantar el aire, contestadas
entries-reminders = Recordatorios puestos
entries-put-off = Un recordatorio aplazado
kept-screening = Gracias. Nada de esto pide que pares.
kept-reminders = Puesto.
kept-settings = Cambiado.
today-settled = Si quieres, di cómo estás después de tu última sesión.
today-activities = Tu plan pregunta cómo te va con lo que te importa. Puede esperar.
kept-settled = Gracias. No se pregunta nada más sobre esto.
kept-not-settled = Gracias por decirlo. Descansa hoy, si puedes. Si duele, sangra o te preocupa, mira qué puede no ir bien y a quién llamar.
kept-time-off = Que los disfrutes. En esos días no se te pide nada.
kept-rated = Gracias. Ninguna respuesta es correcta o incorrecta.
