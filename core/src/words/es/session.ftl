# Logging a session.

log-title = Anotar una sesión
log-practice = ¿Qué hiciste?
log-size = ¿Qué tamaño usaste? Mira el dilatador, no el plan.
log-size-other = Tu plan no tiene ese tamaño. ¿Es de verdad lo que mide de ancho el dilatador que usaste?
log-position = ¿En qué posición?
log-minutes = ¿Durante cuántos minutos, sin contar las pausas?
log-ended = ¿Cómo acabó?
log-finished = Terminada
log-stopped = Paré: { $reason }
log-could-not-start = No pude empezar: { $reason }
log-reason-discomfort = molestia
log-reason-did-not-go-in = no entró
log-reason-upset = me sentí mal de ánimo
log-reason-interrupted = surgió otra cosa
log-reason-other = otro motivo
log-ask-before = ¿Cuánta molestia había antes de empezar?
log-ask-peak = ¿Cuál fue la molestia más alta?
log-ask-after = ¿Cuánta molestia había después?
log-ask-worry = ¿Cuánta preocupación tenías?
log-rating-least = nada
log-rating-most = lo peor imaginable
log-rather-not-say = Prefiero no decirlo
log-note = Una nota para ti, si quieres

# Reporting that something is not right.

signs-title = ¿Algo no va bien?

stop-title = Parar y llamar
stop-title-note = Anotado

# Writing down a talk.

spoke-title = Hablé con…
spoke-nothing-open = No hay nada pendiente. Aun así puedes anotar una conversación.
spoke-with = ¿Con quién?
spoke-when = ¿Cuándo?
spoke-sign = { $sign }, anotado { $when }
spoke-pause = Los dilatadores están en pausa. ¿Te dijo la persona con la que hablaste que puedes continuar?
spoke-note = Solo la persona con la que hablaste decide si puedes continuar. Frond no lo decide.

# The whole list of questions about health.

screening-title = Unas preguntas sobre tu salud
screening-left = { $count ->
        [one] Una pregunta sigue sin respuesta. «No lo sé» es una respuesta.
       *[other] { $count } preguntas siguen sin respuesta. «No lo sé» es una respuesta.
    }
