# The letter for the referrer, and what else goes out.

out-summary-bundle = Guardar una lista para el programa de una clínica (FHIR)

letter-title = Carta sobre un programa en casa
letter-title-copy = Tu copia de una carta sobre ti
letter-date = { $day } de { $month ->
        [1] enero
        [2] febrero
        [3] marzo
        [4] abril
        [5] mayo
        [6] junio
        [7] julio
        [8] agosto
        [9] septiembre
        [10] octubre
        [11] noviembre
       *[12] diciembre
    } de { $year }
letter-about = Sobre: { $name }
letter-foot = Confidencial. Datos anotados por la propia persona.

letter-opening = Le escribo sobre la persona nombrada arriba, que sigue conmigo un programa en casa de fisioterapia del suelo pélvico y que está de acuerdo con esta carta.
letter-opening-copy = Esto es lo que se escribió sobre ti a { $to }. Estuviste de acuerdo. Si algo no es correcto, dilo: se puede corregir.
letter-period = Abarca del { $first } al { $last }. Lo hecho en casa lo anotó la propia persona; nadie lo observó ni lo midió.
letter-period-copy = Abarca del { $first } al { $last }, según lo que anotaste.
letter-nothing-written = Hasta el { $last } no se anotó nada.
letter-narrowed = La persona eligió qué días entregar. Los demás días no están en esta carta.
letter-missing = Faltan algunas anotaciones del diario, así que los números pueden ser demasiado bajos.

letter-done = Prescrito y hecho
letter-nothing-prescribed = En este tiempo no se prescribieron pasos.
letter-scale = La molestia es la mayor de cada sesión, de 0 (ninguna) a 10 (la peor imaginable).
letter-step = { $step }, { $position }, del { $first } al { $last }. Prescrito: { $schedule }, es decir, de { $least } a { $most } veces en esos días{ $off ->
        [0] { "" }
        [one] , sin contar un día libre
       *[other] , sin contar { $off } días libres
    }. Hecho: { $sessions ->
        [0] nada anotado
        [one] una vez
       *[other] { $sessions } veces, en { $days ->
            [one] un día
           *[other] { $days } días
        }
    }.
letter-elsewhere = Con otro tamaño o postura: { $count }.
letter-stopped = Detenidas antes de tiempo: { $count }.
letter-not-started = No se pudieron empezar: { $count }.
letter-peak = Molestia: mediana { $median }, de { $least } a { $most }, en { $rated ->
        [one] una sesión valorada
       *[other] { $rated } sesiones valoradas
    }{ $unrated ->
        [0] { "" }
        [one] ; una no se valoró
       *[other] ; { $unrated } no se valoraron
    }.
letter-unrated = La molestia no se valoró.
letter-practice = { $name }. Prescrito: { $schedule }. Hecho: { $sessions ->
        [0] nada anotado
        [one] una vez
       *[other] { $sessions } veces, en { $days ->
            [one] un día
           *[other] { $days } días
        }
    }.

letter-function = Función y metas
letter-function-scales = Las actividades se valoran de 0 (incapaz) a 10 (como antes); las metas, de −2 (mucho menos de lo esperado) a +2 (mucho más).
letter-activity = { $name }: { $first } el { $firstday }.
letter-activity-changed = { $name }: { $first } el { $firstday }, { $last } el { $lastday }.
letter-goal = Meta «{ $name }»: { $first } el { $firstday }.
letter-goal-changed = Meta «{ $name }»: { $first } el { $firstday }, { $last } el { $lastday }.

letter-signs = Señales, y qué se hizo
letter-no-signs = No se anotó ninguna señal de alarma.
letter-paused = La práctica con dilatadores está en pausa por ahora, hasta que se haya hablado de ello.
letter-sign = { $day }: «{ $sign }» ({ $tier }). No está abierta.
letter-sign-open = { $day }: «{ $sign }» ({ $tier }). Sigue abierta.
letter-sign-talked = { $day }: «{ $sign }» ({ $tier }). Se habló de ella el { $talked }, y quedó cerrada.

letter-plan = El plan ahora
letter-plan-of = Plan de { $clinician }, revisión { $revision } del { $issued }, que se revisará a más tardar el { $review }.
letter-no-plan = No hay ningún plan en vigor.
letter-step-now = Paso en uso: { $step }, { $position }, { $schedule }.
letter-view = Mi valoración
letter-next = Lo previsto a continuación
letter-request = Lo que le pido
letter-request-copy = Lo que se les pidió
letter-closing = Estos números cuentan lo que anotó una sola persona. No muestran causas ni sustituyen una exploración.
letter-closing-copy = Son cuentas de lo que anotaste. No hay un número correcto. Tus notas, tus preguntas y lo demás que escribiste no están en esta carta.
letter-cannot-print = Un carácter que falta en la letra de esta carta aparece como su número, por ejemplo [U+05D0].

out-title = Carta y archivos
out-says = Lo que hay aquí solo llega a otros si usted lo envía. Frond no envía nada.
out-letter = Escribir una carta
out-save-bundle = Guardar el resumen para el programa de una clínica (FHIR)
out-save-table = Guardar las sesiones como tabla
out-files-are-open = Estos archivos no van sellados: quien los tenga puede leerlos. El deseo de hablar a solas nunca está en ellos.
out-many = Muchos resúmenes a la vez, como líneas para una base de datos: cierre el escritorio y use la orden «frond gather --desk».
out-back = Volver al resumen
out-not-made = No se pudo hacer a partir del resumen. Pida el resumen otra vez o actualice Frond.

letter-form-title = Escribir una carta
letter-form-says = Los nombres y las direcciones se escriben solo para esta carta. No se guardan en ningún sitio: ni en el escritorio ni en el diario.
letter-form-never = La carta nunca lleva las notas de la persona, sus preguntas ni que desea hablar a solas.
letter-form-person = Nombre de la persona
letter-form-person-hint = Como la conoce el otro profesional.
letter-form-known = Qué más dice quién es, como la fecha de nacimiento (puede quedar vacío)
letter-form-to = A quién va: nombre y dirección
letter-form-from = Su nombre y profesión
letter-form-reached = Dónde se le puede localizar (puede quedar vacío)
letter-form-date = Fecha de la carta
letter-form-view = Su valoración (puede quedar vacía)
letter-form-next = Lo que prevé a continuación (puede quedar vacío)
letter-form-request = Lo que pide al otro profesional
letter-form-agreement = Consentimiento
letter-form-agreed = La persona está de acuerdo con esta carta
letter-form-agreed-hint = Sin ello no se hace ninguna carta. Ofrézcale una copia.
letter-form-look = Ver la carta
letter-error-needed = Escriba algo aquí.
letter-error-text = Es demasiado largo, o contiene un carácter que no es de texto.
letter-error-date = Indique un día.
letter-error-agreed = No se hace ninguna carta si la persona no está de acuerdo. Pregúntele y después márquelo.
letter-look-title = La carta
letter-look-says = Léala antes de enviarla. No se guarda nada de ella: guárdela ahora si la quiere.
letter-look-copy = Ver la copia de la persona, en palabras sencillas
letter-look-letter = Ver otra vez la carta
letter-save-pdf = Guardar como PDF
letter-save-page = Guardar como página para imprimir
letter-write-again = Empezar otra carta
