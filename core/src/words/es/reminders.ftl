# Choosing reminders. These words stay inside Frond; what leaves it stands in leaving.ftl.

reminders-off = Los recordatorios están apagados hasta que los enciendas.
reminders-after = Después de { $routine }: { $what }
reminders-says = Solo dirá: «{ $words }»
reminders-in-quiet-hours = Las { $time } caen en tus horas de silencio. Entonces no se mostrará nada.
reminders-calendar-note = Quien pueda ver tu calendario verá estas palabras y estas horas, y nada más. Un calendario puede copiarse en otros dispositivos y en la empresa que lo guarda. Lo que hay en él se queda ahí hasta que lo borres.
