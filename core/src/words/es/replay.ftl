# The rule beside a diary, entry by entry, for the clinician.

replay-title = La regla sobre este diario, anotación por anotación
replay-tried = Al lado está otra regla sobre el mismo diario. Sustituye a todas las reglas del plan y a lo que quedó en pausa con la anterior.
replay-none = nada que sugerir
replay-pause = pausar y llamar
replay-back = volver a { $step }
replay-stay = quedarse
replay-stay-tell = quedarse, y avisar en la clínica
replay-talk = momento de hablar
replay-up = probar { $step }
replay-corrected = Corregido: { $what }
replay-struck = Se deja fuera una anotación anterior
replay-same = Las dos reglas dicen lo mismo en todas las anotaciones.
replay-differ = { $count ->
        [one] Las reglas dicen cosas distintas en una anotación, marcada con *.
       *[other] Las reglas dicen cosas distintas en { $count } anotaciones, marcadas con *.
    }
replay-empty = En este diario no hay ninguna anotación.
