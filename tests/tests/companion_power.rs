//! The whole path, from what a person tells to what her plan says, on a disk whose power fails.

use std::path::Path;

use frond_core::companion::{Companion, Request, Told, Write};
use frond_core::diary::entry::EntryId;
use frond_core::ports::sim::SplitMix;
use frond_core::progression::assess;
use frond_tests::home::{FOLDER, Home, PLAN, keeper, ports, session};

const START: &str = "2026-03-02T08:00:00+00:00[Europe/London]";

/// Tells a short, invented life until the power fails; the ids that were acknowledged.
fn live(home: &mut Home) -> Vec<EntryId> {
    let mut acknowledged = Vec::new();
    let told = |day: usize| match day {
        0 => Told::unsigned(PLAN),
        1 => Told::ConfirmStep,
        day => Told::Session(session(140, 8, Some(u8::try_from(day % 4).unwrap()))),
    };
    for day in 0..9 {
        home.pass(20);
        let Ok(id) = home.companion.new_id() else { break };
        let write = Write { id, happened: None, told: told(day) };
        if home.companion.ask(Request::Write(write), &home.moment).is_err() {
            break;
        }
        acknowledged.push(id);
        // A suggestion shown is an entry too; a snapshot in between is saved when nobody waits.
        let _may_fail = home.companion.ask(Request::Suggestion, &home.moment);
        if day == 4 {
            let _may_fail = home.companion.save();
        }
    }
    acknowledged
}

#[test]
fn whatever_a_power_cut_leaves_every_acknowledged_entry_is_there() {
    let (begun, calls) = {
        let mut home = Home::new(START);
        let begun = home.disk.calls();
        assert_eq!(live(&mut home).len(), 9);
        (begun, home.disk.calls())
    };
    let mut dice = SplitMix::new(7);
    let mut cut_short = 0;
    for at in begun..calls {
        for _ in 0..3 {
            let mut home = Home::new(START);
            home.disk.power_off_at(at);
            let acknowledged = live(&mut home);
            cut_short += usize::from(acknowledged.len() < 9);
            let Home { disk, companion, moment } = home;
            drop(companion);
            let disk = disk.after_power_cut(&mut || dice.coin());
            let companion =
                Companion::open(&ports(&disk, 2), Path::new(FOLDER), &keeper(), "en", &moment);
            let Ok(mut companion) = companion else { panic!("power off at {at}: does not open") };
            let entries = companion.entries().unwrap();
            for id in &acknowledged {
                assert!(entries.iter().any(|entry| entry.id == *id), "power off at {at}: lost");
            }
            // What is said afterwards is what the rule says about what is there.
            let answer = companion.ask(Request::Suggestion, &moment).ok().unwrap();
            let shown = serde_json::to_value(&answer.screen).unwrap()["outcome"].clone();
            let said = assess(&entries, &moment.now).unwrap();
            if !shown.is_null() {
                assert_eq!(shown, serde_json::to_value(said.outcome.kind()).unwrap());
            }
        }
    }
    assert!(cut_short > 20, "the power failed too late to try anything");
}
