//! A JSON value as a source of plain types that names the whole path of what it refuses.
//!
//! The path is put together on the way out, only when something was refused, so that no visitor
//! is wrapped: each type is compiled once for one source, and only for the kind of value that it
//! is written as, which keeps the page small. A list is no object whose names were left out.

use std::fmt;

use serde::Deserializer;
use serde::de;
use serde::de::DeserializeOwned;
use serde::de::DeserializeSeed;
use serde::de::Unexpected;
use serde::de::Visitor;
use serde::de::value::BorrowedStrDeserializer;
use serde_json::Map;
use serde_json::Value;

/// One step down into a JSON value.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Step {
    /// The field of an object.
    Field(String),
    /// The entry of a list, counted from 0.
    Index(usize),
}

/// What was refused, and why.
#[derive(Debug)]
pub struct Refused {
    /// The way to it, innermost step first.
    inside_out: Vec<Step>,
    /// What would be right.
    pub message: String,
}

impl Refused {
    /// The way from the whole value to what was refused.
    pub fn path(&self) -> Vec<Step> {
        self.inside_out.iter().rev().cloned().collect()
    }

    fn under(mut self, step: Step) -> Self {
        self.inside_out.push(step);
        self
    }
}

impl fmt::Display for Refused {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.message)
    }
}

impl std::error::Error for Refused {}

impl de::Error for Refused {
    fn custom<T: fmt::Display>(message: T) -> Self {
        Self {
            inside_out: Vec::new(),
            message: message.to_string(),
        }
    }

    fn invalid_type(found: Unexpected<'_>, wanted: &dyn de::Expected) -> Self {
        match found {
            // What serde calls a unit, JSON calls null.
            Unexpected::Unit => Self::custom(format_args!("invalid type: null, expected {wanted}")),
            found => Self::custom(format_args!("invalid type: {found}, expected {wanted}")),
        }
    }
}

/// Reads a value as a `T`.
///
/// # Errors
/// Where the value is not a `T`, and what would be right there.
pub fn from_value<T: DeserializeOwned>(value: &Value) -> Result<T, Refused> {
    T::deserialize(At(value))
}

/// A place in the value.
#[derive(Clone, Copy)]
struct At<'de>(&'de Value);

impl<'de> At<'de> {
    fn found(self) -> Unexpected<'de> {
        match self.0 {
            Value::Null => Unexpected::Unit,
            Value::Bool(value) => Unexpected::Bool(*value),
            Value::Number(number) => match (number.as_u64(), number.as_i64(), number.as_f64()) {
                (Some(value), _, _) => Unexpected::Unsigned(value),
                (None, Some(value), _) => Unexpected::Signed(value),
                (None, None, Some(value)) => Unexpected::Float(value),
                (None, None, None) => Unexpected::Other("number"),
            },
            Value::String(text) => Unexpected::Str(text),
            Value::Array(_) => Unexpected::Seq,
            Value::Object(_) => Unexpected::Map,
        }
    }

    fn not(self, wanted: &dyn de::Expected) -> Refused {
        de::Error::invalid_type(self.found(), wanted)
    }
}

impl<'de> Deserializer<'de> for At<'de> {
    type Error = Refused;

    fn deserialize_any<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Refused> {
        match self.0 {
            Value::Null => visitor.visit_unit(),
            Value::Bool(value) => visitor.visit_bool(*value),
            Value::Number(number) => match (number.as_u64(), number.as_i64(), number.as_f64()) {
                (Some(value), _, _) => visitor.visit_u64(value),
                (None, Some(value), _) => visitor.visit_i64(value),
                (None, None, Some(value)) => visitor.visit_f64(value),
                (None, None, None) => Err(de::Error::custom("a number that is too large")),
            },
            Value::String(text) => visitor.visit_borrowed_str(text),
            Value::Array(list) => visit_list(list, visitor),
            Value::Object(map) => visitor.visit_map(Fields::of(map)),
        }
    }

    fn deserialize_option<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Refused> {
        if self.0.is_null() {
            visitor.visit_none()
        } else {
            visitor.visit_some(self)
        }
    }

    fn deserialize_newtype_struct<V: Visitor<'de>>(
        self,
        _name: &'static str,
        visitor: V,
    ) -> Result<V::Value, Refused> {
        visitor.visit_newtype_struct(self)
    }

    fn deserialize_enum<V: Visitor<'de>>(
        self,
        _name: &'static str,
        _variants: &'static [&'static str],
        visitor: V,
    ) -> Result<V::Value, Refused> {
        match self.0 {
            Value::String(name) => visitor.visit_enum(Variant { name, inside: None }),
            Value::Object(map) if map.len() == 1 => sole(map, visitor),
            _ => Err(de::Error::invalid_type(
                self.found(),
                &"a name, or an object of one field",
            )),
        }
    }

    fn deserialize_ignored_any<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Refused> {
        visitor.visit_unit()
    }

    fn deserialize_bool<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Refused> {
        match self.0 {
            Value::Bool(value) => visitor.visit_bool(*value),
            _ => Err(self.not(&visitor)),
        }
    }

    fn deserialize_str<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Refused> {
        match self.0 {
            Value::String(text) => visitor.visit_borrowed_str(text),
            _ => Err(self.not(&visitor)),
        }
    }

    fn deserialize_string<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Refused> {
        self.deserialize_str(visitor)
    }

    fn deserialize_seq<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Refused> {
        match self.0 {
            Value::Array(list) => visit_list(list, visitor),
            _ => Err(self.not(&visitor)),
        }
    }

    fn deserialize_tuple<V: Visitor<'de>>(
        self,
        _length: usize,
        visitor: V,
    ) -> Result<V::Value, Refused> {
        self.deserialize_seq(visitor)
    }

    fn deserialize_map<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Refused> {
        match self.0 {
            Value::Object(map) => visitor.visit_map(Fields::of(map)),
            _ => Err(self.not(&visitor)),
        }
    }

    fn deserialize_struct<V: Visitor<'de>>(
        self,
        _name: &'static str,
        _fields: &'static [&'static str],
        visitor: V,
    ) -> Result<V::Value, Refused> {
        self.deserialize_map(visitor)
    }

    serde::forward_to_deserialize_any! {
        i8 i16 i32 i64 i128 u8 u16 u32 u64 u128 f32 f64 char
        bytes byte_buf unit unit_struct tuple_struct identifier
    }
}

fn visit_list<'de, V: Visitor<'de>>(list: &'de [Value], visitor: V) -> Result<V::Value, Refused> {
    let mut entries = Entries {
        list: list.iter(),
        read: 0,
    };
    let value = visitor.visit_seq(&mut entries)?;
    if entries.list.len() > 0 {
        let wanted = format!("at most {} entries", entries.read);
        return Err(de::Error::invalid_length(list.len(), &wanted.as_str()));
    }
    Ok(value)
}

fn sole<'de, V: Visitor<'de>>(
    map: &'de Map<String, Value>,
    visitor: V,
) -> Result<V::Value, Refused> {
    match map.iter().next() {
        Some((name, value)) => visitor.visit_enum(Variant {
            name,
            inside: Some(value),
        }),
        None => Err(de::Error::custom("an object of one field")),
    }
}

/// What is left of a list.
struct Entries<'de> {
    list: std::slice::Iter<'de, Value>,
    read: usize,
}

impl<'de> de::SeqAccess<'de> for &mut Entries<'de> {
    type Error = Refused;

    fn next_element_seed<S: DeserializeSeed<'de>>(
        &mut self,
        seed: S,
    ) -> Result<Option<S::Value>, Refused> {
        let Some(value) = self.list.next() else {
            return Ok(None);
        };
        let index = self.read;
        self.read += 1;
        seed.deserialize(At(value))
            .map(Some)
            .map_err(|refused| refused.under(Step::Index(index)))
    }

    fn size_hint(&self) -> Option<usize> {
        Some(self.list.len())
    }
}

/// What is left of an object, and the field whose name was read last.
struct Fields<'de> {
    fields: serde_json::map::Iter<'de>,
    field: Option<(&'de String, &'de Value)>,
}

impl<'de> Fields<'de> {
    fn of(map: &'de Map<String, Value>) -> Self {
        Self {
            fields: map.iter(),
            field: None,
        }
    }
}

impl<'de> de::MapAccess<'de> for Fields<'de> {
    type Error = Refused;

    fn next_key_seed<S: DeserializeSeed<'de>>(
        &mut self,
        seed: S,
    ) -> Result<Option<S::Value>, Refused> {
        self.field = self.fields.next();
        let Some((name, _)) = self.field else {
            return Ok(None);
        };
        seed.deserialize(BorrowedStrDeserializer::new(name))
            .map(Some)
            .map_err(|refused: Refused| refused.under(Step::Field(name.clone())))
    }

    fn next_value_seed<S: DeserializeSeed<'de>>(&mut self, seed: S) -> Result<S::Value, Refused> {
        let Some((name, value)) = self.field else {
            return Err(de::Error::custom("a value without a name"));
        };
        seed.deserialize(At(value))
            .map_err(|refused| refused.under(Step::Field(name.clone())))
    }

    fn size_hint(&self) -> Option<usize> {
        Some(self.fields.len())
    }
}

/// One of several: its name, and what it holds if it holds something.
struct Variant<'de> {
    name: &'de str,
    inside: Option<&'de Value>,
}

impl<'de> de::EnumAccess<'de> for Variant<'de> {
    type Error = Refused;
    type Variant = Self;

    fn variant_seed<S: DeserializeSeed<'de>>(self, seed: S) -> Result<(S::Value, Self), Refused> {
        let name = BorrowedStrDeserializer::new(self.name);
        Ok((seed.deserialize(name)?, self))
    }
}

impl<'de> Variant<'de> {
    fn inside(&self, wanted: &'static str) -> Result<At<'de>, Refused> {
        let missing = || de::Error::invalid_type(Unexpected::UnitVariant, &wanted);
        self.inside.map(At).ok_or_else(missing)
    }

    fn step(&self) -> Step {
        Step::Field(self.name.to_owned())
    }
}

impl<'de> de::VariantAccess<'de> for Variant<'de> {
    type Error = Refused;

    fn unit_variant(self) -> Result<(), Refused> {
        match self.inside {
            None | Some(Value::Null) => Ok(()),
            Some(value) => Err(de::Error::invalid_type(At(value).found(), &"unit variant")),
        }
    }

    fn newtype_variant_seed<S: DeserializeSeed<'de>>(self, seed: S) -> Result<S::Value, Refused> {
        seed.deserialize(self.inside("newtype variant")?)
            .map_err(|refused| refused.under(self.step()))
    }

    fn tuple_variant<V: Visitor<'de>>(
        self,
        _length: usize,
        visitor: V,
    ) -> Result<V::Value, Refused> {
        self.inside("tuple variant")?
            .deserialize_any(visitor)
            .map_err(|refused| refused.under(self.step()))
    }

    fn struct_variant<V: Visitor<'de>>(
        self,
        _fields: &'static [&'static str],
        visitor: V,
    ) -> Result<V::Value, Refused> {
        self.inside("struct variant")?
            .deserialize_any(visitor)
            .map_err(|refused| refused.under(self.step()))
    }
}
