//! A component's parameters as a table: each stated once, reached by its field's name.
//!
//! A component file states its parameters with [`component_params!`]: value, range and the words
//! an error uses. The struct, its typical values, the table and the access by name all come from
//! that one statement. Ranges are what the equations survive, not what a sound part may have.

/// What is known of one parameter besides its present value.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ParamAbout {
    /// Field name with its unit suffix, such as `tension_n`.
    pub field: &'static str,
    /// Value in a sound machine P.
    pub typical: f64,
    /// Smallest value the equations accept.
    pub min: f64,
    /// Largest value the equations accept.
    pub max: f64,
    /// What a person calls it.
    pub words: &'static str,
}

/// A component whose numbers can be reached by field name.
pub trait ParamTable {
    /// One entry a field, in the order of the struct.
    const ABOUT: &'static [ParamAbout];
    /// The field's value, if there is such a field.
    fn value(&self, field: &str) -> Option<f64>;
    /// The field itself, if there is such a field.
    fn slot(&mut self, field: &str) -> Option<&mut f64>;
}

/// States a component's parameters: documentation, name, typical value, range, words.
macro_rules! component_params {
    (
        $(#[$about:meta])*
        $name:ident {
            $( $(#[$doc:meta])* $field:ident = $typical:expr, $min:expr => $max:expr, $words:expr; )*
        }
    ) => {
        $(#[$about])*
        #[derive(Debug, Clone, PartialEq)]
        pub struct $name {
            $( $(#[$doc])* pub $field: f64, )*
        }
        impl $name {
            /// The sound machine P; each field names where its number comes from.
            pub fn typical() -> Self {
                Self { $( $field: $typical, )* }
            }
        }
        impl $crate::plant::param_table::ParamTable for $name {
            const ABOUT: &'static [$crate::plant::param_table::ParamAbout] = &[
                $( $crate::plant::param_table::ParamAbout {
                    field: stringify!($field),
                    typical: $typical,
                    min: $min,
                    max: $max,
                    words: $words,
                }, )*
            ];
            fn value(&self, field: &str) -> Option<f64> {
                match field {
                    $( stringify!($field) => Some(self.$field), )*
                    _ => None,
                }
            }
            fn slot(&mut self, field: &str) -> Option<&mut f64> {
                match field {
                    $( stringify!($field) => Some(&mut self.$field), )*
                    _ => None,
                }
            }
        }
    };
}
pub(crate) use component_params;
