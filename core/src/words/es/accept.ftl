# Accepting a plan, in cards, and confirming the step.

accept-title = Un plan para ti
accept-whose-title = De quién es este plan
accept-for = Es para: { $whom }
accept-from = { $clinician }, { $clinic }, lo escribió el { $date }. Es la revisión { $revision }.
accept-younger = Es para alguien que aún es menor de edad. Quien lo escribió confirma que se siguieron las normas locales para su seguridad.
accept-steps-title = Los pasos
accept-step = { $name }: { $used }, { $schedule }
accept-start = Empiezas con: { $name }
accept-rule-title = Qué viene después
accept-rule = Tu especialista dejó escrito cuándo quedarse, cuándo volver atrás y cuándo avanzar. Frond te cuenta lo que dice. Decides tú.
accept-no-rule = En este plan no hay ninguna regla. Frond no sugiere nada, y guarda tu diario.
accept-call-title = A quién llamar
accept-contact = { $name }, { $phone }. Horario: { $hours }.
accept-emergency = En una emergencia en { $country }: { $number }.
accept-cautions-title = Con qué tener cuidado
accept-until-title = Hasta cuándo
accept-until = Tu especialista lo revisa otra vez el { $date } como tarde.
accept-yours = ¿Es tuyo? Se hizo para: { $whom }
accept-yes = Sí, es mío

step-check-title = ¿Es esto lo que usas ahora?
