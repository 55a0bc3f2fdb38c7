//! Components rendered as text, for tests that run without a browser.

use std::future::Future;
use std::pin::pin;
use std::sync::Arc;
use std::task::Context;
use std::task::Poll;
use std::task::Wake;
use std::thread::Thread;

use yew::BaseComponent;
use yew::ServerRenderer;

struct Unpark(Thread);

impl Wake for Unpark {
    fn wake(self: Arc<Self>) {
        self.0.unpark();
    }
}

/// The component's HTML; attributes come out sorted by name.
pub fn as_text<C>(props: fn() -> C::Properties) -> String
where
    C: BaseComponent,
{
    wait(
        ServerRenderer::<C>::with_props(props)
            .hydratable(false)
            .render(),
    )
}

fn wait<T>(future: impl Future<Output = T>) -> T {
    let waker = Arc::new(Unpark(std::thread::current())).into();
    let mut context = Context::from_waker(&waker);
    let mut future = pin!(future);
    loop {
        match future.as_mut().poll(&mut context) {
            Poll::Ready(value) => return value,
            Poll::Pending => std::thread::park(),
        }
    }
}
