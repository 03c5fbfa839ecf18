# What the clinician's rule says now, and why. Nothing reads as an order; staying is never a failure.

suggestion-title = Qué dice ahora tu plan
suggestion-step = { $name } ({ $used })
suggestion-step-up = En tu próxima sesión podrías probar: { $step }.
suggestion-equal = Probar y quedarte, las dos cosas están bien. Solo vale para la próxima sesión.
suggestion-step-back = En tu próxima sesión, vuelve a: { $step }.
suggestion-step-back-kind = Volver atrás es cuidarte. Los pasos vienen otra vez.
suggestion-hold = Quédate con lo que usas ahora.
suggestion-hold-kind = Quedarse es parte del plan. No hay prisa.
suggestion-tell-clinician = Cuéntale a { $clinician } cómo ha ido. Ahora vendría bien una conversación.
suggestion-talk = Es buen momento para hablar con { $clinician } de lo que viene después. Hasta entonces, quédate con lo que usas ahora.
suggestion-pause = Los dilatadores están en pausa. Mira a quién llamar.
suggestion-whose = Esta es la regla de { $clinician }, revisión { $revision } del { $date }. Frond no tiene ninguna regla propia.
suggestion-no-programme = Todavía no hay un plan, así que no hay nada que sugerir.
suggestion-no-steps = Tu plan no tiene pasos, así que no hay nada que sugerir. El plan es respirar y descansar.
suggestion-no-rule = Tu plan no tiene una regla para este paso. Pregunta a tu especialista qué viene después.

reason-step-up = Para probar el paso siguiente, todo esto:
reason-step-back = Para volver atrás, cualquiera de estas cosas:
reason-pause = Para pausar y llamar, cualquiera de estas cosas:
reason-met = sí
reason-not-yet = todavía no
reason-not-so = no
reason-unknown = no se puede saber
reason-session = { $date }
reason-session-rated = { $date }: { $rating } { $number }
reason-session-unrated = { $date }: { $rating } sin valorar
reason-an-entry = Una anotación anterior
reason-earlier = { $count ->
        [one] Una sesión anterior
       *[other] { $count } sesiones anteriores
    }

criterion-days-on-step = { $days ->
        [one] { $days } día en este paso
       *[other] { $days } días en este paso
    }, sin contar los días libres
criterion-sessions = Sesiones completas en { $days ->
        [one] { $days } día
       *[other] { $days } días
    } dentro de { $within ->
        [one] { $within } día
       *[other] { $within } días
    }
criterion-at-most = { $last ->
        [one] Como máximo { $number } de { $rating } en la última sesión completa, y en cada sesión desde entonces
       *[other] Como máximo { $number } de { $rating } en las últimas { $last } sesiones completas, y en cada sesión desde la primera de ellas
    }
criterion-sign-free = { $days ->
        [one] { $days } día
       *[other] { $days } días
    } sin nada por lo que llamar
criterion-feels-ready = Te gustaría probar el paso siguiente
criterion-at-least = { $last ->
        [one] { $number } o más de { $rating } en la última sesión
       *[other] { $number } o más de { $rating } en { $sessions } de las últimas { $last } sesiones
    }
criterion-stopped = { $last ->
        [one] La última sesión, parada antes o sin empezar
       *[other] { $sessions } de las últimas { $last } sesiones, paradas antes o sin empezar
    }
criterion-days-without = { $days ->
        [one] { $days } día
       *[other] { $days } días
    } sin práctica
criterion-steps-back = { $times ->
        [one] Una vez
       *[other] { $times } veces
    } a un paso anterior dentro de { $within ->
        [one] { $within } día
       *[other] { $within } días
    }

missing-days-on-step = { $days ->
        [one] { $days } día más en este paso
       *[other] { $days } días más en este paso
    }
missing-sign-free-days = { $days ->
        [one] { $days } día más sin nada por lo que llamar
       *[other] { $days } días más sin nada por lo que llamar
    }
missing-practised-days = { $days ->
        [one] { $days } día más con una sesión completa
       *[other] { $days } días más con una sesión completa
    }
missing-full-sessions = { $sessions ->
        [one] { $sessions } sesión completa más
       *[other] { $sessions } sesiones completas más
    }
missing-smaller-last = Primero, practicar otra vez este tamaño
missing-comfort = Un poco más de tiempo para que se note más fácil
missing-ratings = { $sessions ->
        [one] Una sesión está sin valorar; está bien, y el plan espera
       *[other] { $sessions } sesiones están sin valorar; está bien, y el plan espera
    }
missing-answer = Tu propia palabra sobre si te gustaría
missing-clock = Primero hay que confirmar el reloj

bar-not-known = Algo no se pudo saber, así que el plan espera.
bar-clock = Confirma primero la hora; hasta entonces el plan espera.
bar-step-not-confirmed = Confirma lo que usas ahora; hasta entonces el plan espera.
bar-review-passed = Ya tocaba revisar el plan; hasta entonces sigue como está.
bar-stay = Por ahora, este paso.
bar-entries-missing = Pueden faltar anotaciones; el plan espera hasta que hayas hablado con tu especialista.
bar-restore = Di qué usas ahora; hasta entonces el plan espera.
bar-maintain = El plan es mantener lo que hay.
