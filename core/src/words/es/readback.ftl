# A whole programme said back, sentence by sentence, so that it can be checked before it is used. Read by the
# clinician and, for whoever wants every line, under the cards when a plan is accepted.

readback-head = Esta es la revisión { $revision } del programa «{ $id }», para { $whom }: { $who }.
readback-head-plain = Esta es la revisión { $revision }, para { $whom }: { $who }.
readback-adult = una persona adulta
readback-younger = alguien menor de edad; quien lo escribió confirma que se siguieron las normas locales de protección
readback-author = Lo escribió { $name }, { $clinic }, y se emitió el { $at }; sus propios textos están en el idioma «{ $language }».
readback-author-plain = Lo escribió { $name }, { $clinic }, el { $day }.
readback-review = Se revisa otra vez el { $day } como tarde; después de ese día nada sugiere subir hasta entonces.
readback-contact = Contacto: { $name }, teléfono { $phone }, { $hours }. Si nadie contesta: { $advice }
readback-out-of-hours = Fuera de ese horario: { $advice }
readback-out-of-hours-phone = Fuera de ese horario: { $advice } Teléfono { $phone }.
readback-emergency = En una emergencia en este país, { $country }: { $number }. En otro sitio vale el número local.

readback-no-steps = No hay pasos.
readback-steps = { $count ->
        [one] Hay { $count } paso, primero el más bajo.
       *[other] Hay { $count } pasos, primero el más bajo.
    }
readback-steps-from = { $count ->
        [one] Hay { $count } paso, primero el más bajo; se empieza en el { $step }.
       *[other] Hay { $count } pasos, primero el más bajo; se empieza en el { $step }.
    }
readback-step = Paso { $number } (id { $id }), «{ $name }»: { $practice }, { $position }. { $parts }. { $schedule }.
readback-step-plain = Paso { $number }, «{ $name }»: { $practice }, { $position }. { $parts }. { $schedule }.
readback-step-maintain = Este paso mantiene lo que hay; nada sugiere ir más allá.
readback-step-gate = Antes de pasar de este paso se habla.
readback-step-named = paso { $number }, «{ $name }»
readback-step-unknown = paso «{ $id }», que no existe
readback-instruction = Instrucción: { $text }
readback-part-trainer = dilatador «{ $label }», { $size }, { $minutes }
readback-part-plain = sin dilatador, { $minutes }
readback-widest = { $mm } mm ({ $cm } cm) de diámetro máximo
readback-practice = Práctica «{ $name }» ({ $practice }): { $minutes }, { $schedule }.
readback-breath = Una respiración: { $phases }.
readback-breath-in = tomar aire { $seconds } s
readback-breath-hold = aguantar { $seconds } s
readback-breath-out = soltar el aire { $seconds } s
readback-breath-rest = descansar { $seconds } s
readback-schedule = { $weekly }, como máximo { $daily } al día
readback-schedule-rest = { $weekly }, como máximo { $daily } al día, con al menos { $rest } de descanso entre medias
readback-quoted = «{ $text }»

readback-no-rule = No hay ninguna regla: no se sugiere nada.
readback-on-every-step = En todos los pasos
readback-on-other-steps = En todos los pasos sin regla propia
readback-on-step = En el paso { $number }, por su propia regla
readback-up = { $on }: subir un paso cuando se cumple todo esto:
readback-up-never = { $on }: nunca se sugiere subir.
readback-back = { $on }: volver atrás cuando se cumple algo de esto, al paso más bajo de los nombrados si son varios:
readback-pause = { $on }: pausar y llamar, hasta que se haya hablado con la clínica, cuando se cumple algo de esto:
readback-gap = { $on }: después de { $days } sin ninguna sesión, lo que cuenta para subir empieza de cero.
readback-item = - { $what }.
readback-up-days-on-step = el paso empezó hace al menos { $days }, sin contar los días libres
readback-up-sessions = dentro de los últimos { $within }, hoy incluido, hubo una sesión completa en al menos { $days }
readback-up-discomfort = en las últimas { $sessions }, y en todas las demás sesiones desde la primera de ellas, { $rating } se valoró con { $number } o menos de 10
readback-up-sign-free = durante { $days } no se comunicó ni se cerró ninguna señal más allá de una solo anotada, y el primer programa se aceptó hace al menos ese tiempo
readback-up-feels-ready = a la pregunta, hecha después de la última sesión, «¿te gustaría probar el paso siguiente?», la persona dijo que sí
readback-back-to = { $when }: { $where }
readback-to-before = al paso anterior
readback-to-first = al primer paso
readback-to-step = al { $step }, o al paso anterior si ese no está antes
readback-steps-back = { $times ->
        [one] dentro de los últimos { $within }, hoy incluido, hubo al menos { $times } cambio a un paso anterior
       *[other] dentro de los últimos { $within }, hoy incluido, hubo al menos { $times } cambios a un paso anterior
    }
readback-rated-at-least = { $among } { $rating } se valoró con { $number } o más de 10
readback-stopped = { $among } la práctica se paró antes o no se pudo empezar, sin contar las interrupciones
readback-absent = no hubo ninguna sesión durante { $days }
readback-among-last = en la última sesión
readback-among = en al menos { $sessions } de las últimas { $last } sesiones

readback-full-session = Una sesión completa es una del paso actual que se terminó, con al menos los minutos mínimos en su última parte, con la molestia más alta valorada, sin ninguna señal más allá de una solo anotada, y escrita como tarde { $hours } después de empezar.
readback-late = Una sesión escrita más de { $hours } después de empezar se marca como tardía.
readback-asked = En cada sesión se valora de 0 a 10: { $ratings }.
readback-screening = La lista completa de avisos se pregunta cada { $days }.
readback-activities = La persona valora de 0 a 10 cuánto puede hacer: { $activities }.
readback-activities-every = La persona valora de 0 a 10, cada { $days }, cuánto puede hacer: { $activities }.
readback-goals = Metas: { $goals }.
readback-sign-stricter = La señal «{ $sign }» se toma más en serio de lo habitual: { $tier }.
readback-spotting = Un manchado, unas gotas de sangre, solo se anota en este programa.
readback-sign-seen = En la clínica se ha visto la señal «{ $sign }» de la anotación { $entry } y se cierra con esta revisión.
readback-sign-seen-plain = En la clínica se ha visto la señal «{ $sign }» y se cierra con esta revisión.
readback-own-caution = Aviso propio de la clínica: { $caution }
readback-numbers-folded = Los tamaños y las cantidades quedan plegados en Hoy hasta que se abran.
readback-grounding-first = Antes de cada sesión con dilatador se ofrece un ejercicio de calma con los ojos abiertos.
readback-contact-on-stop = El contacto se ofrece siempre que se paró una sesión.
readback-recipient = Un resumen se puede sellar para { $name }, clave { $key }.
readback-recipient-plain = Un resumen se puede sellar para { $name }, cuya clave acaba en { $end }.

readback-rating-peak = la molestia más alta
readback-rating-before = la molestia antes
readback-rating-after = la molestia después
readback-rating-worry = la preocupación
readback-practice-trainer = práctica con dilatador
readback-practice-breathing = respiración lenta
readback-practice-belly-breathing = respiración con el abdomen
readback-practice-meditation = meditación
readback-practice-other = otra práctica «{ $id }»
readback-practice-other-plain = otra práctica
readback-on-back = boca arriba
readback-side-lying = de lado
readback-sitting = en posición sentada
readback-standing = de pie
readback-position-other = en la posición que dice la instrucción
readback-tier-note = solo se anota
readback-tier-ask-first = preguntar antes de continuar
readback-tier-stop = parar y llamar al contacto
readback-tier-emergency = parar y llamar al número de emergencias

readback-days = { $count ->
        [one] { $count } día
       *[other] { $count } días
    }
readback-whole-days = { $count ->
        [one] { $count } día entero
       *[other] { $count } días enteros
    }
readback-different-days = { $count ->
        [one] { $count } día distinto
       *[other] { $count } días distintos
    }
readback-hours = { $count ->
        [one] { $count } hora
       *[other] { $count } horas
    }
readback-full-sessions = { $count ->
        [one] { $count } sesión completa
       *[other] { $count } sesiones completas
    }
readback-times = { $count ->
        [one] una vez
       *[other] { $count } veces
    }
readback-at = { $day } a las { $time }
readback-at-zone = { $day } a las { $time }, { $zone }
