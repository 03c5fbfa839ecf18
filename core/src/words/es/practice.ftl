# Breathing, practising with a clock, and what is shown after a stop.

## Breathing.

breathing-even-name = Respiración pareja
breathing-even-how = Toma aire mientras cuentas despacio hasta cinco, y suéltalo mientras cuentas despacio hasta cinco. No se aguanta el aire.
breathing-cue-in = Toma aire
breathing-cue-out = Suelta
breathing-cue-hold = Espera con suavidad
breathing-cue-over = Esa fue la última respiración. Respira como quieras.
breathing-softly = Respira con suavidad. No tiene que ser profundo.
breathing-may-relax = Respirar despacio puede servir para relajarte. Si hoy no te sienta bien, déjalo.
breathing-refused-fast = La respiración de tu plan es demasiado rápida para seguirla aquí. Pregunta por ella a tu especialista. Hasta entonces tienes la respiración pareja.
breathing-refused-slow = La respiración de tu plan es demasiado lenta para seguirla aquí. Pregunta por ella a tu especialista. Hasta entonces tienes la respiración pareja.
breathing-refused-incomplete = La respiración de tu plan no está completa. Pregunta por ella a tu especialista. Hasta entonces tienes la respiración pareja.

belly-lie = Ponte boca arriba. Apoya las pantorrillas en una silla o en cojines, con las caderas y las rodillas dobladas más o menos en ángulo recto.
belly-hands = Pon una mano justo debajo de las costillas y la otra en el pecho.
belly-breathe = Deja que la mano de abajo suba un poco cuando entra el aire y baje cuando sale. La mano del pecho se queda bastante quieta.
belly-otherwise = Si estar boca arriba no te sienta bien, elige otra postura. Lo que te dijo tu especialista va primero.

## Practising with a clock.

timed-ready = Empieza cuando quieras.
timed-least-reached = Tu plan pide al menos este tiempo. Puedes acabar aquí, o continuar mientras te sientas bien.
timed-part-over = Esta parte ha terminado y el reloj se ha parado. Tómate tu tiempo. La parte siguiente empieza cuando tú digas.
timed-all-over = El tiempo ha terminado. Tómate tu tiempo para lo que viene después.
timed-paused = En pausa. El reloj está quieto.
timed-begin = Empezar
timed-pause = Pausa
timed-go-on = Continuar
timed-part-done = Basta de esta parte
timed-smaller = Usar uno más pequeño
timed-stop = Parar

found-title = Tu práctica se interrumpió
found-began = Empezó { $when }.
found-counted = { $minutes ->
        [0] Es seguro menos de un minuto.
        [one] Es seguro que practicaste { $minutes } minuto.
       *[other] Es seguro que practicaste { $minutes } minutos.
    }
found-only-certain = Solo se cuenta el tiempo que es seguro. Si practicaste más, puedes anotarlo tú.
found-go-on = Continuar desde aquí
found-finish = Acabarla, y guardar el tiempo que es seguro
found-discard = Dejarla fuera

running-unreadable = Tu práctica se interrumpió, y lo que se había anotado de ella no se puede leer. Nada más se ha dañado. Puedes anotarla tú.
running-update = Esta práctica se empezó en una versión de Frond más nueva. Actualiza Frond para continuar. No se ha cambiado nada.
running-not-kept = Esto no se pudo anotar. Tu práctica continúa; anótala tú cuando acabes.

## After a stop.

stopped-something = Sí
stopped-not-sure = No lo sé
stopped-nothing = No
stopped-later = No quiero contestar ahora
stopped-then-breathe = Cuando sientas más calma, puedes dejar que el aire entre y salga un rato, con suavidad y a su ritmo. Solo si quieres.
stopped-call = Si quieres hablar con alguien: { $clinician }, { $contact }. Horario: { $hours }.
stopped-out-of-hours = Fuera de este horario: { $line }
stopped-call-own-doctor = Si quieres hablar con alguien, tu médica o médico de siempre también está para esto.
stopped-tomorrow = Lo demás puede esperar hasta mañana.

## Choosing and breathing.

breathing-title = Respiración
breathing-refused = { $name }: { $why }
breathing-rhythm-in = { $seconds ->
        [one] toma aire { $seconds } segundo
       *[other] toma aire { $seconds } segundos
    }
breathing-rhythm-out = { $seconds ->
        [one] suelta { $seconds } segundo
       *[other] suelta { $seconds } segundos
    }
breathing-rhythm-hold = { $seconds ->
        [one] espera con suavidad { $seconds } segundo
       *[other] espera con suavidad { $seconds } segundos
    }
breathing-cues = Avisar del cambio de la respiración sin tener que mirar
breathing-cue-tone = Un tono suave
breathing-cue-vibration = Una vibración corta
breathing-cue-word = Una palabra hablada
belly-title = Cómo ponerte para respirar con el abdomen

hold-questions-title = Aguantar el aire

## What to practise.

practices-title = ¿Qué te gustaría hacer?
practices-empty = Ahora no hay nada más que hacer con un reloj.
anything-new-not-sure = ¿Tienes dudas? Elige «Algo». Está bien.

found-put-away = Apartarla

running-part = Parte { $number } de { $parts }
running-clock = { $minutes } { $seconds }
running-seconds = { $seconds ->
        [one] { $seconds } segundo
       *[other] { $seconds } segundos
    }

## How it was.

rate-title = ¿Cómo fue?
rate-why = ¿Por qué paraste? Puedes dejarlo sin contestar.
rate-really-used = Si usaste otra cosa, o duró otro tiempo, elige «Algo fue distinto».
rate-keep = Guardar
rate-keep-and-tell = Guardar, y decir que algo no va bien
