//! Tests of the diary on disk. `conformance` holds on every disk; the rest breaks things on the
//! simulated one.

mod anew;
mod conformance;
mod damage;
mod faults;
mod garbage;
mod kit;
mod power;
mod power_switch;
mod stored;
mod vectors;
