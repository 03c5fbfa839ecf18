//! The stored form of the settings, and its schema.

use schemars::generate::SchemaSettings;
use serde_json::{Value, json};

use super::*;

fn full() -> ReminderSettings {
    let routine = Line::new("brushing my teeth").unwrap();
    let weekend = Weekdays::new([chrono::Weekday::Sun, chrono::Weekday::Sat]).unwrap();
    let mut settings = settings(vec![
        daily(Practice::Trainer, &["21:00", "08:30", "08:30"]),
        Reminder {
            practice: Practice::Breathing,
            when: When::After { routine, days: weekend, about: Some(time("07:05")) },
            skip_when_done: false,
        },
    ]);
    settings.quiet = Some(QuietHours::new(time("22:00"), time("07:00")).unwrap());
    settings.words = NeutralWords::OwnTime;
    settings
}

fn schema() -> Value {
    let generator = SchemaSettings::draft2020_12().into_generator();
    generator.into_root_schema_for::<ReminderSettings>().to_value()
}

#[test]
fn the_stored_form_and_its_schema_are_frozen() {
    insta::assert_json_snapshot!("stored", full());
    insta::assert_json_snapshot!("schema", schema());
    let text = serde_json::to_string(&full()).unwrap();
    assert!(serde_json::from_str::<ReminderSettings>(&text).unwrap() == full());
}

/// Each of these breaks one bound; the reader refuses it, and so does the schema where it can say it.
#[test]
fn what_lies_outside_the_bounds_is_refused() {
    let schema = jsonschema::validator_for(&schema()).unwrap();
    let good = serde_json::to_value(full()).unwrap();
    assert!(schema.is_valid(&good));
    let reminder = good["reminders"][0].clone();
    let mut most = good.clone();
    most["reminders"] = json!(vec![reminder.clone(); 20]);
    assert!(serde_json::from_value::<ReminderSettings>(most.clone()).is_ok());
    assert!(schema.is_valid(&most));
    for (place, wrong, schema_says) in [
        ("/key", json!("9"), false),
        ("/words", json!("pelvic"), false),
        ("/reminders", json!(vec![reminder.clone(); 21]), false),
        ("/quiet", json!({"from": "22:00", "to": "22:00"}), true),
        ("/quiet", json!({"from": "24:00", "to": "07:00"}), false),
        ("/quiet", json!({"from": "22:00"}), false),
        ("/quiet", json!({"from": "22:00", "to": "07:00", "days": 1}), false),
        ("/reminders/0/practice", json!("dance"), false),
        ("/reminders/0/when/times/at", json!([]), false),
        ("/reminders/0/when/times/at", json!(["8:30"]), false),
        ("/reminders/0/when/times/at", json!(["08:60"]), false),
        ("/reminders/0/when/times/at", json!(["+8:30"]), false),
        ("/reminders/0/when/times/at", json!(["08:30:00"]), false),
        (
            "/reminders/0/when/times/at",
            json!(["01:00", "02:00", "03:00", "04:00", "05:00", "06:00", "07:00"]),
            false,
        ),
        ("/reminders/0/when/times/days", json!([]), false),
        ("/reminders/0/when/times/days", json!(["monday"]), false),
        ("/reminders/0/when", json!({"times": {"days": ["mon"]}}), false),
        ("/reminders/1/when/after/routine", json!(""), false),
        ("/reminders/1/when/after/routine", json!("x".repeat(201)), false),
        ("/reminders/0", json!({"practice": "trainer"}), false),
    ] {
        let mut changed = good.clone();
        *changed.pointer_mut(place).unwrap_or_else(|| panic!("no {place}")) = wrong;
        assert!(serde_json::from_value::<ReminderSettings>(changed.clone()).is_err(), "{changed}");
        assert_eq!(schema.is_valid(&changed), schema_says, "{changed}");
    }
    let mut changed = good.clone();
    changed["further"] = json!(true);
    assert!(serde_json::from_value::<ReminderSettings>(changed).is_err());
}
