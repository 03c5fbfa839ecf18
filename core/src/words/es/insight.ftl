# What the numbers of one diary or of all can bear. Folded; read by a clinician. No verdict anywhere.

insight-title = Números, para mirar más de cerca
insight-self-reported = Todo esto lo contó la persona. Son pocos valores, en números enteros de 0 a 10, y cada uno se apoya en el anterior.
insight-nominal = Los límites, los intervalos y la p se calculan como si cada valor fuera independiente. Son nominales: léalos como una guía aproximada, no como probabilidades.
insight-no-verdict = Ningún número de aquí dice qué hacer, y ninguno mezcla pasos ni revisiones.

insight-span = del { $first } al { $last }, revisión { $revision }
insight-stretch = { $step }, { $span }
insight-interval = de { $lower } a { $upper }
insight-p = p { $p }
insight-p-under = p menor que { $p }
insight-count = { $count }
insight-share = { $share }
insight-none = –
insight-median-range = { $median } (de { $least } a { $most })

insight-counts = Recuentos, primero el tiempo más reciente en un paso
insight-column-step = Paso, días, revisión
insight-column-sessions = Sesiones
insight-column-days = Días con sesión
insight-column-on-step = Sesiones con el tamaño y la posición del paso
insight-column-rated = De ellas, valoradas
insight-column-peak = Molestia más alta: mediana (rango)

insight-done = Lo que se hizo
insight-gaps = { $days } días con sesión; de uno al siguiente, mediana de { $median ->
        [one] 1 día
       *[other] { $median } días
    }, como mucho { $longest ->
        [one] 1 día
       *[other] { $longest } días
    }
insight-on-step = con el tamaño y la posición del paso: { $sessions ->
        [one] 1 sesión
       *[other] { $sessions } sesiones
    }, { $unrated ->
        [0] ninguna
       *[other] { $unrated }
    } de ellas sin valorar la molestia más alta
insight-minutes = minutos de estas: mediana { $median }, rango de { $least } a { $most }
insight-done-bears = Son todas las sesiones contadas, no una muestra: no les corresponde ningún intervalo. Lo que no se anotó no está aquí.

insight-ratings = Valoraciones en el centro y en los extremos
insight-ratings-bears = Una mediana y un rango describen estas sesiones y ninguna otra. Las sesiones sin valorar pueden haber sido las difíciles.

insight-change = Primeras y últimas valoraciones
insight-change-bears = Tres valoraciones en cada extremo son pocas, y un mal día puede moverlas. Los umbrales son promedios de otras personas.

insight-chart = Límites habituales (gráfico de valores individuales)
insight-limits = { $ratings } valoraciones, media { $centre }, diferencia media de una a la siguiente { $moving }; límites de { $lower } a { $upper } en la escala de 0 a 10
insight-beyond-none = ninguna valoración queda fuera de los límites
insight-beyond = { $count ->
        [one] 1 valoración queda fuera de los límites: { $list }
       *[other] { $count } valoraciones quedan fuera de los límites: { $list }
    }
insight-beyond-one = { $day } ({ $rating })
insight-chart-bears = Las valoraciones que se apoyan en el día anterior hacen los límites demasiado estrechos, así que algunas quedan fuera por azar. Una valoración fuera es un día por el que preguntar, no un hallazgo.
insight-chart-source = NIST/SEMATECH e-Handbook 6.3.2.2. Se muestra a partir de { $least } valoraciones (Provost y Murray, The Health Care Data Guide; no todos los autores coinciden).

insight-trend = Dirección a lo largo del tiempo
insight-trend-pairs = de { $pairs } pares de una valoración anterior y otra posterior, la posterior es más baja en { $lower }, igual en { $equal }, más alta en { $higher }; tau { $tau }, Mann-Kendall { $p }
insight-slope = pendiente mediana de { $slope } puntos por semana (Theil-Sen)
insight-slope-interval = pendiente mediana de { $slope } puntos por semana (Theil-Sen; intervalo del 95 % { $interval })
insight-trend-bears = La p y el intervalo son nominales: las valoraciones que se apoyan en el día anterior los hacen parecer más seguros de lo que son. Una dirección no dice nada de su causa.
insight-trend-source = Sen 1968, J Am Stat Assoc 63:1379; Mann 1945, Econometrica 13:245. Se muestra a partir de { $least } valoraciones (Gilbert 1987: hasta diez la aproximación no vale).

insight-too-few = Sin mostrar
insight-too-few-says = Valoradas aquí: { $rated }. Las primeras y las últimas se comparan a partir de { $change }, la dirección se muestra a partir de { $trend }, los límites a partir de { $chart }.

insight-compared = Dos tiempos en { $step }
insight-compared-rated = { $earlier }: { $first } valoradas; { $later }: { $second } valoradas
insight-compared-pairs = de { $pairs } pares con una valoración de cada tiempo, la del tiempo posterior es más baja en { $lower }, igual en { $equal }, más alta en { $higher }
insight-compared-beyond = valoraciones del tiempo posterior: { $later }; por debajo de todas las anteriores: { $below }; por encima de todas: { $above }
insight-compared-nap = no solapamiento de todos los pares { $nap } hacia más bajo (0,5: iguales; 1: todas más bajas); tau { $tau } (-1: todas más bajas)
insight-compared-few = Se muestra a partir de { $least } valoraciones en cada tiempo.
insight-compared-bears = Dice cuánto distan los dos tiempos, no por qué: entre ellos hay días, otros pasos y quizá otro plan. Una deriva dentro de uno de ellos parece una diferencia entre los dos.
insight-compared-source = Parker 2011, Behav Modif 35:303. Se muestra a partir de { $least } valoraciones en cada uno (What Works Clearinghouse, normas para diseños de caso único).

insight-cabinet = Tiempo en un paso, en todos los diarios
insight-cabinet-diaries = { $count ->
        [one] 1 diario, con su último resumen.
       *[other] { $count } diarios, cada uno con su último resumen.
    } De cada persona cuenta solo el primer tiempo en cada tipo de paso. Los días son días del calendario.
insight-cabinet-unsure = { $count ->
        [one] 1 de ellos queda fuera: faltan anotaciones o se borraron.
       *[other] { $count } de ellos quedan fuera: faltan anotaciones o se borraron.
    }
insight-cabinet-censored = Cuando un tiempo no se vio hasta el final, cuenta mientras se vio. Eso es correcto solo si esas personas hubieran seguido como las demás. Quien recibió un plan nuevo, o dejó de compartir, puede muy bien ser distinto.
insight-cabinet-alike = Los pasos del mismo tamaño y la misma posición se juntan, sea cual sea su plan. La regla de cada plan dice lo pronto que puede terminar un paso, así que estos tiempos hablan tanto de los planes como de las personas.
insight-cabinet-no-verdict = Quedarse mucho tiempo en un paso puede ser lo adecuado, y esto no dice nada de ninguna persona en particular.
insight-cabinet-source = Kaplan y Meier 1958, J Am Stat Assoc 53:457; intervalos con la varianza de Greenwood en la escala log(-log), y Wilson 1927, J Am Stat Assoc 22:209. Se muestra a partir de { $least } personas (práctica común, sin fuente).

insight-time-counts = { $people ->
        [one] 1 persona empezó
       *[other] { $people } personas empezaron
    }. Lo dejaron por un paso posterior: { $later }; por uno anterior: { $earlier }. Sin ver el final: todavía en él: { $still }; plan nuevo: { $plan }
insight-time-few = Se muestra a partir de { $least } personas.
insight-time-median = estimación: el día { $days } la mitad lo había dejado
insight-time-no-median = estimación: hasta donde se vio, lo había dejado menos de la mitad
insight-went-on = de { $seen } cuyo final se vio, { $later } siguieron a un paso posterior: { $share } (intervalo del 95 % { $interval }, como si fueran una muestra de personas como ellas)
insight-time-table = Parte estimada que sigue en él
insight-column-day = Día
insight-column-at-risk = Vistas hasta ahí
insight-column-still-on = Parte que sigue más tiempo
insight-column-interval = Intervalo del 95 %
