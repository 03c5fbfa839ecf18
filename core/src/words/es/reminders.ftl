# Choosing reminders. These words stay inside Frond; what leaves it stands in leaving.ftl.

reminders-off = Los recordatorios están apagados hasta que los enciendas.
reminders-after = Después de { $routine }: { $what }
reminders-says = Solo dirá: «{ $words }»
reminders-in-quiet-hours = Las { $time } caen en tus horas de silencio. Entonces no se mostrará nada.
reminders-calendar-note = Quien pueda ver tu calendario verá estas palabras y estas horas, y nada más. Un calendario puede copiarse en otros dispositivos y en la empresa que lo guarda. Lo que hay en él se queda ahí hasta que lo borres.

reminders-title = Recordatorios
reminders-turn-on = Encender los recordatorios
reminders-turn-off = Apagar los recordatorios
reminders-empty = Todavía no hay ningún recordatorio. Añade una hora abajo.
reminders-quiet = No llega nada de { $from } a { $to }.
reminders-quiet-none = No hay horas de silencio.
reminders-quiet-title = Horas de silencio
reminders-words = Qué dice un recordatorio
reminders-add-title = Añadir un recordatorio
reminders-practice = ¿Para qué?
reminders-days = ¿Qué días?
reminders-times = ¿A qué horas? Hasta seis, como 08:30 20:00.
reminders-after-label = O después de algo de tu propio día, como «lavarme los dientes»
reminders-about = ¿A qué hora suele ser? Sin una hora, solo se ve en Hoy.
reminders-skip = Dejarlo fuera cuando ya esté hecho
reminders-add = Añadir
reminders-remove = Quitar
reminders-from = Desde
reminders-to = Hasta
reminders-keep = Guardar
reminders-no-quiet = Sin horas de silencio
reminders-coming = { $date }, { $time }
reminders-every-day = todos los días
reminders-and = , { "" }
reminders-line = { $what }: { $days }, { $times }
reminders-after-about = { $after } ({ $days }, hacia las { $times })
reminders-after-silent = { $after } ({ $days })
