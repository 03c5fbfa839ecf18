//! The few resources of FHIR R4 that are written, each with the few elements that are used. Field names are
//! the standard's. Source: HL7 FHIR R4 (4.0.1), <http://hl7.org/fhir/R4/>.

use serde::Serialize;
use serde_json::Number;

use super::code::{self, Code};
use super::id::hyphened;
use crate::summary::DiaryId;

/// A bundle of resources.
#[derive(Serialize)]
#[serde(rename_all = "camelCase")]
pub struct Bundle {
    resource_type: &'static str,
    id: String,
    #[serde(rename = "type")]
    kind: &'static str,
    timestamp: String,
    /// The resources with their full addresses.
    pub entry: Vec<BundleEntry>,
}

impl Bundle {
    pub(super) fn collection(id: String, made: String, resources: Vec<(String, Resource)>) -> Self {
        let entry = resources
            .into_iter()
            .map(|(id, resource)| BundleEntry { full_url: address(&id), resource })
            .collect();
        Self { resource_type: "Bundle", id, kind: "collection", timestamp: made, entry }
    }
}

/// One resource of a bundle.
#[derive(Serialize)]
#[serde(rename_all = "camelCase")]
pub struct BundleEntry {
    /// Its address inside the bundle.
    pub full_url: String,
    /// The resource.
    pub resource: Resource,
}

fn address(id: &str) -> String {
    format!("urn:uuid:{id}")
}

/// Any resource that is written.
#[derive(Serialize)]
#[serde(tag = "resourceType")]
#[allow(missing_docs, reason = "the standard's own names")]
#[allow(private_interfaces, reason = "to be serialised only")]
pub enum Resource {
    CarePlan(Box<CarePlan>),
    Communication(Box<Communication>),
    Flag(Box<Flag>),
    Goal(Box<Goal>),
    Observation(Box<Observation>),
}

/// A reference inside the bundle, or to a person by an identifier.
#[derive(Clone, Default, Serialize)]
pub(super) struct Reference {
    #[serde(skip_serializing_if = "Option::is_none")]
    reference: Option<String>,
    #[serde(rename = "type", skip_serializing_if = "Option::is_none")]
    kind: Option<&'static str>,
    #[serde(skip_serializing_if = "Option::is_none")]
    identifier: Option<Identifier>,
    #[serde(skip_serializing_if = "Option::is_none")]
    display: Option<String>,
}

impl Reference {
    /// To a resource of the same bundle.
    pub(super) fn to(id: &str) -> Self {
        Self { reference: Some(address(id)), ..Self::default() }
    }

    /// To the person whose diary it is, known by the diary's id alone.
    pub(super) fn by_diary(diary: DiaryId) -> Self {
        let identifier =
            Identifier { system: "urn:ietf:rfc:3986", value: address(&hyphened(diary.0)) };
        Self { kind: Some("Patient"), identifier: Some(identifier), ..Self::default() }
    }

    /// To somebody known by name alone.
    pub(super) fn by_name(kind: &'static str, name: String) -> Self {
        Self { kind: Some(kind), display: Some(name), ..Self::default() }
    }
}

#[derive(Clone, Serialize)]
struct Identifier {
    system: &'static str,
    value: String,
}

#[derive(Clone, Serialize)]
pub(super) struct Coding {
    system: &'static str,
    code: String,
    display: String,
}

#[derive(Clone, Default, Serialize)]
pub(super) struct Concept {
    #[serde(skip_serializing_if = "Vec::is_empty")]
    coding: Vec<Coding>,
    #[serde(skip_serializing_if = "Option::is_none")]
    text: Option<String>,
}

impl Concept {
    /// With words beside the code.
    pub(super) fn worded(mut self, text: Option<String>) -> Self {
        self.text = text;
        self
    }

    /// With a LOINC code before our own.
    pub(super) fn and_loinc(mut self, (code, display): (&str, &str)) -> Self {
        self.coding.insert(0, coding(code::LOINC, code, display));
        self
    }
}

fn coding(system: &'static str, code: &str, display: &str) -> Coding {
    Coding { system, code: code.to_owned(), display: display.to_owned() }
}

/// A code of our own.
pub(super) fn coded(code: Code) -> Concept {
    Concept { coding: vec![coding(code::SYSTEM, code.code(), code.display())], text: None }
}

/// A sign.
pub(super) fn sign(sign: crate::safety::Sign) -> Concept {
    let (code, display) = (code::sign(sign), code::sign_display(sign));
    Concept { coding: vec![coding(code::SYSTEM, &code, &display)], text: None }
}

/// What sort of observation it is, by the standard's own list.
#[derive(Clone, Copy)]
pub(super) enum Named {
    /// Something done.
    Activity,
    /// Something asked.
    Survey,
}

impl Named {
    pub(super) fn category(self) -> Concept {
        const SYSTEM: &str = "http://terminology.hl7.org/CodeSystem/observation-category";
        let (code, display) = match self {
            Self::Activity => ("activity", "Activity"),
            Self::Survey => ("survey", "Survey"),
        };
        Concept { coding: vec![coding(SYSTEM, code, display)], text: None }
    }
}

/// Why there is no value: asked, and rather not said.
pub(super) fn rather_not_say() -> Concept {
    const SYSTEM: &str = "http://terminology.hl7.org/CodeSystem/data-absent-reason";
    Concept { coding: vec![coding(SYSTEM, "asked-declined", "Asked But Declined")], text: None }
}

#[derive(Clone, Serialize)]
pub(super) struct Period {
    pub(super) start: String,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub(super) end: Option<String>,
}

#[derive(Clone, Serialize)]
pub(super) struct Quantity {
    value: Number,
    unit: &'static str,
    system: &'static str,
    code: &'static str,
}

/// The units that are used, all of UCUM.
#[derive(Clone, Copy)]
pub(super) enum Unit {
    Score,
    Minutes,
    Millimetres,
}

/// A quantity from tenths of its unit, written without a point where it is whole.
pub(super) fn tenths(tenths: u32, unit: Unit) -> Value {
    let whole = tenths.is_multiple_of(10).then(|| Number::from(tenths / 10));
    let value = whole
        .or_else(|| Number::from_f64(f64::from(tenths) / 10.0))
        .unwrap_or_else(|| Number::from(tenths / 10));
    quantity(value, unit)
}

/// A score, which may be below zero.
pub(super) fn score(value: i64) -> Value {
    quantity(Number::from(value), Unit::Score)
}

fn quantity(value: Number, unit: Unit) -> Value {
    let code = match unit {
        Unit::Score => "{score}",
        Unit::Minutes => "min",
        Unit::Millimetres => "mm",
    };
    Value::Quantity(Quantity { value, unit: code, system: "http://unitsofmeasure.org", code })
}

/// A value of an observation or of a component.
#[derive(Clone, Serialize)]
pub(super) enum Value {
    #[serde(rename = "valueQuantity")]
    Quantity(Quantity),
    #[serde(rename = "valueCodeableConcept")]
    Concept(Concept),
    #[serde(rename = "valueString")]
    Text(String),
    #[serde(rename = "valueBoolean")]
    Boolean(bool),
    #[serde(rename = "valueInteger")]
    Integer(i32),
    #[serde(rename = "valueDateTime")]
    DateTime(String),
}

#[derive(Clone, Serialize)]
#[serde(rename_all = "camelCase")]
pub(super) struct Component {
    code: Concept,
    #[serde(flatten)]
    value: Option<Value>,
    #[serde(skip_serializing_if = "Option::is_none")]
    data_absent_reason: Option<Concept>,
}

/// A component with a value.
pub(super) fn codes(code: Code, value: Value) -> Component {
    component(coded(code), value)
}

/// A component under any code.
pub(super) fn component(code: Concept, value: Value) -> Component {
    Component { code, value: Some(value), data_absent_reason: None }
}

/// A component that was asked for and rather not told.
pub(super) fn not_said(code: Concept) -> Component {
    Component { code, value: None, data_absent_reason: Some(rather_not_say()) }
}

#[derive(Clone, Serialize)]
pub(super) struct Annotation {
    pub(super) text: String,
}

#[derive(Default, Serialize)]
#[serde(rename_all = "camelCase")]
pub(super) struct Observation {
    pub(super) id: String,
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub(super) based_on: Vec<Reference>,
    pub(super) status: &'static str,
    pub(super) category: Vec<Concept>,
    pub(super) code: Concept,
    pub(super) subject: Reference,
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub(super) focus: Vec<Reference>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub(super) effective_date_time: Option<String>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub(super) effective_period: Option<Period>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub(super) issued: Option<String>,
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub(super) performer: Vec<Reference>,
    #[serde(flatten)]
    pub(super) value: Option<Value>,
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub(super) note: Vec<Annotation>,
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub(super) derived_from: Vec<Reference>,
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub(super) component: Vec<Component>,
}

#[derive(Serialize)]
#[serde(rename_all = "camelCase")]
pub(super) struct CarePlan {
    pub(super) id: String,
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub(super) replaces: Vec<Reference>,
    pub(super) status: &'static str,
    pub(super) intent: &'static str,
    pub(super) category: Vec<Concept>,
    pub(super) title: String,
    pub(super) subject: Reference,
    pub(super) period: Period,
    pub(super) created: String,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub(super) author: Option<Reference>,
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub(super) goal: Vec<Reference>,
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub(super) activity: Vec<Activity>,
}

#[derive(Serialize)]
pub(super) struct Activity {
    pub(super) detail: Detail,
}

#[derive(Serialize)]
#[serde(rename_all = "camelCase")]
pub(super) struct Detail {
    pub(super) code: Concept,
    pub(super) status: &'static str,
    pub(super) scheduled_timing: Timing,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub(super) product_codeable_concept: Option<Concept>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub(super) description: Option<String>,
}

#[derive(Serialize)]
pub(super) struct Timing {
    pub(super) repeat: Repeat,
}

#[derive(Serialize)]
#[serde(rename_all = "camelCase")]
pub(super) struct Repeat {
    pub(super) duration: u32,
    pub(super) duration_max: u32,
    pub(super) duration_unit: &'static str,
    pub(super) frequency: u32,
    pub(super) frequency_max: u32,
    pub(super) period: u32,
    pub(super) period_unit: &'static str,
}

#[derive(Serialize)]
#[serde(rename_all = "camelCase")]
pub(super) struct Goal {
    pub(super) id: String,
    pub(super) lifecycle_status: &'static str,
    pub(super) description: Concept,
    pub(super) subject: Reference,
}

#[derive(Serialize)]
pub(super) struct Flag {
    pub(super) id: String,
    pub(super) status: &'static str,
    pub(super) code: Concept,
    pub(super) subject: Reference,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub(super) period: Option<Period>,
}

#[derive(Serialize)]
#[serde(rename_all = "camelCase")]
pub(super) struct Communication {
    pub(super) id: String,
    pub(super) status: &'static str,
    pub(super) subject: Reference,
    pub(super) topic: Concept,
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub(super) about: Vec<Reference>,
    pub(super) sent: String,
    pub(super) sender: Reference,
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub(super) recipient: Vec<Reference>,
}
