# The clinician's first reading of a summary. Short: it is read in ten minutes before a visit.

reading-title = Resumen, tal como se entregó
reading-time-alone = A SOLAS, POR FAVOR: la persona que hizo esto quiere un rato a solas con usted. No lo mencione delante de otras personas.

reading-narrowed = ESTO NO ES EL DIARIO ENTERO. La persona eligió qué entregar:
reading-narrowed-span = solo lo que pasó del { $from } al { $to }
reading-narrowed-from = solo lo que pasó desde el { $from }
reading-narrowed-to = solo lo que pasó hasta el { $to }
reading-narrowed-notes = sin notas
reading-narrowed-questions = sin preguntas para la visita

reading-for = Plan para: { $name }
reading-made = Hecho el { $day } de { $year } a las { $time }. Todo lo que contiene lo cuenta la propia persona.
reading-signed = Firmado, y sin cambios desde entonces. Marca de este diario, para comparar la próxima vez: { $pin }

reading-day = { $weekday ->
        [1] lun
        [2] mar
        [3] mié
        [4] jue
        [5] vie
        [6] sáb
       *[7] dom
    } { $day } { $month ->
        [1] ene
        [2] feb
        [3] mar
        [4] abr
        [5] may
        [6] jun
        [7] jul
        [8] ago
        [9] sept
        [10] oct
        [11] nov
       *[12] dic
    }
reading-day-of-year = { $day } { $year }
reading-on-back = boca arriba
reading-side-lying = de lado
reading-sitting = en posición sentada
reading-standing = de pie
reading-position-other = otra posición
reading-step-sized = { $name } ({ $size })
reading-used = { $what }, { $position }
reading-weekly = { $times ->
        [one] una vez por semana
       *[other] { $times } veces por semana
    }
reading-weekly-span = de { $least } a { $most } veces por semana
reading-stopped = parada antes: { $reason }
reading-could-not-start = no se pudo empezar: { $reason }
reading-reason-discomfort = molestia
reading-reason-did-not-go-in = no entró
reading-reason-upset = malestar emocional
reading-reason-interrupted = interrupción externa
reading-reason-other = otro motivo
reading-rated = { $rating } { $number }
reading-unrated = { $rating } sin valorar

reading-open = Señales pendientes
reading-nothing-open = Ninguna pendiente, sin pausa.
reading-open-sign = «{ $sign }» ({ $tier }), pendiente desde el { $day }
reading-paused = En pausa por la regla, hasta que una conversación la cierre
reading-paused-since = En pausa por la regla desde el { $day }, hasta que una conversación la cierre
reading-tier-emergency = emergencia
reading-tier-stop = parar y llamar
reading-tier-ask-first = preguntar primero
reading-tier-note = solo anotar

reading-questions = Preguntas para la visita
reading-question = { $text } ({ $day })

reading-present = Paso actual
reading-no-step = Ningún paso en uso.
reading-step-since = { $step }, desde el { $day }
reading-step-not-confirmed = Sin confirmar que sea el que se usa: pregunte qué tamaño se usa de verdad.
reading-programme = Plan de { $clinician }, revisión { $revision } del { $day }
reading-review-passed = Tocaba revisar el plan el { $day } como tarde; hasta entonces no se dice ningún paso hacia arriba.

reading-by-step = Paso a paso, el último primero (cada uno dentro de un paso y una revisión)
reading-stretch = { $step }, del { $first } al { $last }, revisión { $revision }
reading-practised = se practicó { $sessions ->
        [one] una vez
       *[other] { $sessions } veces
    } en { $span ->
        [one] { $span } día
       *[other] { $span } días
    }{ $off ->
        [0] { "" }
        [one] , 1 de ellos libre
       *[other] , { $off } de ellos libres
    }; lo previsto para ese tiempo: de { $least } a { $most } ({ $schedule })
reading-elsewhere = { $count ->
        [one] 1 de ellas con otro tamaño u otra posición, sin contar abajo
       *[other] { $count } de ellas con otro tamaño u otra posición, sin contar abajo
    }
reading-spread = { $rating }: mediana { $median }, cuartiles { $lower } y { $upper }, rango de { $least } a { $most }, { $unrated ->
        [0] ninguna
       *[other] { $unrated }
    } sin valorar
reading-spread-few = { $rating }: mediana { $median }, rango de { $least } a { $most }, { $unrated ->
        [0] ninguna
       *[other] { $unrated }
    } sin valorar
reading-values = { $spread }; en orden: { $values }
reading-none-rated = molestia más alta: sin valorar nunca
reading-change = de las tres primeras a las tres últimas: de { $first } a { $last }, { $reaches }
reading-change-neither = sin cambio relevante
reading-change-points = un cambio relevante por 2 puntos, no por 30 %
reading-change-share = un cambio relevante por 30 %, no por 2 puntos
reading-change-both = un cambio relevante por 2 puntos y por 30 %
reading-about-change = El cambio compara las medianas de las tres primeras y las tres últimas valoraciones, a partir de { $least } valoraciones (práctica común, sin fuente). Relevante son 2 puntos o 30 % (Farrar 2001, Pain 94:149: promedios de personas con dolor persistente).
reading-settled = calmado al día siguiente, cuando se preguntó: sí { $yes }, todavía no { $notyet }, prefiere no decirlo { $unsaid }

reading-practices = Además
reading-practice = { $name }: { $sessions ->
        [one] una vez
       *[other] { $sessions } veces
    } en { $days ->
        [one] 1 día
       *[other] { $days } días
    } (plan ahora: { $schedule })

reading-stopped-heading = Paradas antes o sin empezar
reading-stopped-session = { $day }, { $used }: { $ended }, tras { $minutes } min; { $peak }

reading-different = Otro tamaño u otra posición que los del paso
reading-different-session = { $day }: { $used } en lugar de { $step }; { $peak }

reading-suggestions = Lo que sugirió la regla, y lo elegido
reading-suggestion = { $day }: { $said }; { $chosen }
reading-tried = eligió probar
reading-stayed = eligió quedarse
reading-not-answered = no dijo qué elegía
reading-stays-shown = { $count ->
        [one] además, una vez: quedarse
       *[other] además, { $count } veces: quedarse
    }

reading-own-steps = Pasos a los que no llevó ninguna sugerencia
reading-step-own = { $day }: { $step }, decisión propia
reading-step-clinician = { $day }: { $step }, indicado en la clínica
reading-step-asked = { $day }: { $step }, dicho al preguntar qué paso se usa

reading-kept = Cómo se llevó el diario
reading-lowered = { $day }: { $rating } primero { $old }, corregido a { $new } el { $changed }
reading-rating-taken-out = { $day }: { $rating } primero { $old }, quitado el { $changed }
reading-late = { $count ->
        [one] 1 sesión escrita más de { $hours } horas después de empezar (el número del plan)
       *[other] { $count } sesiones escritas más de { $hours } horas después de empezar (el número del plan)
    }; estas sesiones no dan ningún paso
reading-late-session = { $day }, escrita el { $written }
reading-left-out = { $count ->
        [one] 1 anotación se dejó fuera después
       *[other] { $count } anotaciones se dejaron fuera después
    }; sesiones entre ellas: { $sessions ->
        [0] ninguna
       *[other] { $sessions }
    }
reading-left-out-session = { $day }: { $told }
reading-accepted = { $day }, aceptado a sabiendas: { $plan }
reading-accepted-now = aceptado a sabiendas: { $although }
reading-although-unsigned = no lo había firmado nadie
reading-although-other-key = estaba firmado con otra clave que la conocida hasta entonces
reading-although-older = es una revisión anterior a la que usaba entonces
reading-although-same = lleva el número de la revisión que usaba entonces y dice otra cosa
reading-missing = { $count ->
        [one] Falta 1 anotación: el archivo del diario se dañó
       *[other] Faltan { $count } anotaciones: el archivo del diario se dañó
    }
reading-erased = { $count ->
        [one] Se borró algo una vez; nada dice qué
       *[other] Se borró algo { $count } veces; nada dice qué
    }
reading-restored = { $count ->
        [one] Recuperado de una copia una vez; lo posterior a esa copia no está
       *[other] Recuperado de una copia { $count } veces; lo posterior a cada copia no está
    }

reading-time-off = Días libres
reading-off = del { $from } al { $to }

reading-talks = Conversaciones, y señales anotadas antes
reading-noted = { $day }: «{ $sign }» ({ $tier }); ya no está pendiente
reading-noted-only = { $day }: «{ $sign }» ({ $tier })
reading-talk = { $day }: conversación con { $with }
reading-talk-closed = cerrado: «{ $sign }»
reading-talk-go-on = y le dijeron que podía continuar

reading-function = Actividades (de 0, no puede, a 10, como antes) y metas (de -2 a 2; 0, lo esperado)
reading-followed = { $name }: { $ratings }
reading-rating-on = { $number } ({ $day })
reading-function-changed = media de { $activities ->
        [one] la actividad valorada al menos dos veces
       *[other] las { $activities } actividades valoradas al menos dos veces
    }: { $first } al principio, { $last } al final; más que el error (al menos { $least }, MDC90: Stratford 1995)
reading-function-not-changed = media de { $activities ->
        [one] la actividad valorada al menos dos veces
       *[other] las { $activities } actividades valoradas al menos dos veces
    }: { $first } al principio, { $last } al final; dentro del error (menos de { $least }, MDC90: Stratford 1995)
reading-attainment = logro de metas T { $score } sobre { $goals } metas del mismo peso; 50 es lo esperado (Turner-Stokes 2009)

reading-notes = Notas
reading-note = { $day }: { $note }
reading-notes-folded = { $count ->
        [one] 1 nota, plegada
       *[other] { $count } notas, plegadas
    }

reading-rule = Lo que dijo la regla al hacer esto, con las palabras que ve la persona
reading-outcome-pause = Pausar los dilatadores y llamar.
reading-outcome-back = Volver a { $step }.
reading-outcome-stay = Quedarse.
reading-outcome-stay-tell = Quedarse, y avisar en la clínica: se cumplió un paso atrás en el primer paso.
reading-outcome-talk = Momento de hablar de lo que viene después.
reading-outcome-up = Podría probar { $step }.
reading-no-rule = No hay ninguna regla para el paso actual.
reading-whose = La regla de { $clinician }, revisión { $revision } del { $day }. Frond no tiene ninguna propia.
reading-reason = { $criterion }: { $verdict }
reading-replay-same = Repetida aquí a partir de las anotaciones, la regla dice lo mismo.
reading-replay-differs = Repetida aquí a partir de las anotaciones, la regla dice otra cosa que en el teléfono. Compare las versiones de Frond antes de fiarse de una de las dos.
reading-replay-narrowed = Se calculó en el teléfono con el diario entero, y no se puede repetir con lo que hay aquí.

reading-self-reported = Todo lo de aquí lo cuenta la propia persona. Las valoraciones son números enteros que dependen del día anterior; las medianas y los rangos no dicen más que eso.
reading-does-not-decide = Esta lectura no decide nada y no sustituye ningún examen. Quien entrega menos puede tener un motivo; pregunte, no suponga.
reading-practice-decides = Lo que pasa después lo deciden la práctica con licencia y las normas locales.
