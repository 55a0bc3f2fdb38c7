//! Components rendered as text, for tests that run without a browser.

use std::future::Future;
use std::pin::pin;
use std::sync::Arc;
use std::sync::mpsc;
use std::task::Context;
use std::task::Poll;
use std::task::Wake;

use yew::BaseComponent;
use yew::ServerRenderer;

/// Tells the waiting end that there is something to do.
struct Call(mpsc::Sender<()>);

impl Wake for Call {
    fn wake(self: Arc<Self>) {
        // Nobody listens any more once the text is there.
        let _ = self.0.send(());
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
    let (call, called) = mpsc::channel();
    let waker = Arc::new(Call(call)).into();
    let mut context = Context::from_waker(&waker);
    let mut future = pin!(future);
    loop {
        match future.as_mut().poll(&mut context) {
            Poll::Ready(value) => return value,
            Poll::Pending => called.recv().expect("the waker above lives on"),
        }
    }
}
