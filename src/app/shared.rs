//! A shared value that counts as unchanged only when it is the very same one.
//!
//! View models are built anew whenever they may have changed; comparing them deeply on every
//! frame would cost more than drawing them. Props hold them in this wrapper instead.

use std::ops::Deref;
use std::rc::Rc;

/// A reference-counted value compared by address.
#[derive(Debug)]
pub struct Shared<T: ?Sized>(Rc<T>);

impl<T> Shared<T> {
    /// Wraps a value.
    pub fn new(value: T) -> Self {
        Self(Rc::new(value))
    }
}

impl<T> From<Rc<T>> for Shared<T> {
    fn from(value: Rc<T>) -> Self {
        Self(value)
    }
}

impl<T: ?Sized> Clone for Shared<T> {
    fn clone(&self) -> Self {
        Self(Rc::clone(&self.0))
    }
}

impl<T: ?Sized> PartialEq for Shared<T> {
    fn eq(&self, other: &Self) -> bool {
        Rc::ptr_eq(&self.0, &other.0)
    }
}

impl<T: ?Sized> Deref for Shared<T> {
    type Target = T;

    fn deref(&self) -> &T {
        &self.0
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn equal_values_are_different_until_they_are_the_same_one() {
        let one = Shared::new(vec![1, 2]);
        assert!(one == one.clone());
        assert!(one != Shared::new(vec![1, 2]));
    }
}
