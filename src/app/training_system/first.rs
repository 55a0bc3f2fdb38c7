//! Two things under way: what comes of the one that is done first.

use std::future::poll_fn;
use std::pin::pin;
use std::task::Poll;

use js_sys::Promise;
use wasm_bindgen::JsValue;
use wasm_bindgen_futures::JsFuture;

/// Which of two.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Either<A, B> {
    /// The one.
    One(A),
    /// The other.
    Other(B),
}

/// Waits for the first of two; the other is let go. Where both are done, the one counts.
pub async fn first<A, B>(
    one: impl Future<Output = A>,
    other: impl Future<Output = B>,
) -> Either<A, B> {
    let mut one = pin!(one);
    let mut other = pin!(other);
    poll_fn(move |context| match one.as_mut().poll(context) {
        Poll::Ready(done) => Poll::Ready(Either::One(done)),
        Poll::Pending => other.as_mut().poll(context).map(Either::Other),
    })
    .await
}

/// Lets time pass.
pub async fn rest(ms: i32) {
    let promise = Promise::new(&mut |resolve, _| {
        let window = gloo::utils::window();
        let set = window.set_timeout_with_callback_and_timeout_and_arguments_0(&resolve, ms);
        if set.is_err() {
            // Without a clock nobody waits.
            let _ = resolve.call0(&JsValue::NULL);
        }
    });
    // A promise of this kind is always kept.
    let _ = JsFuture::from(promise).await;
}

#[cfg(all(test, not(target_arch = "wasm32")))]
mod tests {
    use std::future::pending;
    use std::future::ready;
    use std::task::Context;
    use std::task::Waker;

    use super::*;

    fn now<T>(future: impl Future<Output = T>) -> Option<T> {
        let mut context = Context::from_waker(Waker::noop());
        match pin!(future).poll(&mut context) {
            Poll::Ready(done) => Some(done),
            Poll::Pending => None,
        }
    }

    #[test]
    fn what_is_done_first_counts_and_the_one_before_the_other() {
        assert_eq!(now(first(ready(1), pending::<u8>())), Some(Either::One(1)));
        assert_eq!(
            now(first(pending::<u8>(), ready(2))),
            Some(Either::Other(2))
        );
        assert_eq!(now(first(ready(1), ready(2))), Some(Either::One(1)));
        assert_eq!(now(first(pending::<u8>(), pending::<u8>())), None);
    }
}
