# The calendar, one entry, and putting it right.

calendar-title = Calendario
calendar-month = { $month ->
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
calendar-weekday = { $day ->
        [1] lun
        [2] mar
        [3] mié
        [4] jue
        [5] vie
        [6] sáb
       *[7] dom
    }
calendar-empty = En este mes no hay nada.
calendar-time-off = Días libres
calendar-step = Otro paso
calendar-sign = Se anotó algo

action-calendar = Calendario
action-month-before = El mes anterior
action-month-after = El mes siguiente
action-open-day = Lo que escribiste ese día
action-open-entry = Abrir esta anotación

entry-title = Una anotación
entry-position = Posición: { $position }
entry-written = Escrita { $when }
entry-put-right = Corregida { $when }
entry-late = Contada algún tiempo después. Se queda como está; tu plan la cuenta para todo menos para pasar al paso siguiente.
entry-left-out = Dejada fuera. La sigues viendo aquí, y puedes volver a contarla.
entry-versions = Cómo estaba antes
entry-version-taken-back = Esta versión se retiró.
entry-rated = Valorado con { $number } de 10: { $rating }
entry-rather-not-say = Prefiero no decirlo: { $rating }
entry-note = Tu nota: { $note }
entry-closed = Con esto se cerró: { $sign }
entry-go-on = La persona con la que hablaste dijo que puedes continuar.
entry-no-go-on = No se habló de si puedes continuar.
entry-step = Paso: { $step }

action-correct = Corregir
action-leave-out = Dejar esto fuera
action-count-again = Volver a contarla
action-keep = Guardar

correct-title = Corregir
correct-when = ¿Cuándo fue?
correct-stays-visible = La versión nueva cuenta desde ahora. La primera se queda donde puedes verla.
correct-only-left-out = Esta no se puede cambiar, pero puedes dejarla fuera.
correct-not-here = Aquí no hay nada que cambiar.
