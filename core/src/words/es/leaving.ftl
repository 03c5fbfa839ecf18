# Words that leave Frond: on a notification, on a watch or in a car, in a calendar. A stranger may
# read them. Nothing here hints at health, at a body, at an appointment or at this program; a test
# holds every message of this file, in every language, against that language's list of health words.

leaving-moment = Un momento para ti
leaving-quiet = Un rato tranquilo
leaving-reminder = Tu recordatorio
leaving-own-time = Tiempo para lo tuyo
leaving-calendar-file = calendario.ics

# Palabras propias de un teléfono, junto a un aviso, un archivo que se comparte y la pantalla tras salir deprisa.

leaving-channel = Recordatorios
leaving-later = Más tarde
leaving-done = Hecho
leaving-open = Abrir
leaving-share = Compartir
leaving-closed = Cerrado
