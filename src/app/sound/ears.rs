//! What a person at the bench hears: the machine before them, as loud as they have set it.

use yew::html::Scope;
use yew::prelude::*;

use crate::app::session::Session;
use crate::app::settings::Settings;
use crate::app::settings::SettingsHandle;
use crate::app::sound::Speaker;
use crate::app::view::Speed;

/// The loudspeaker with what a person has set.
pub struct Ears {
    speaker: Speaker,
    /// As they are now.
    pub settings: Settings,
    _kept: Option<ContextHandle<SettingsHandle>>,
}

impl Ears {
    /// Ears of a component; `told` makes its message when a setting changes.
    pub fn of<C: Component>(link: &Scope<C>, told: fn(Settings) -> C::Message) -> Self {
        let told = link.callback(move |handle: SettingsHandle| told(handle.now));
        let (settings, kept) = link.context::<SettingsHandle>(told).unzip();
        Self {
            speaker: Speaker::default(),
            settings: settings.map(|handle| handle.now).unwrap_or_default(),
            _kept: kept,
        }
    }

    /// A person has acted: from now on the page may sound.
    pub fn wake(&mut self) {
        if self.settings.sound {
            self.speaker.wake();
        }
    }

    /// Plays what the machine sounds like now; silence away from the bench and while time is skipped.
    pub fn follow(&mut self, session: &Session, at_bench: bool) {
        let job = session.live();
        let heard = at_bench
            && self.settings.sound
            && !job.is_over()
            && !session.is_waiting()
            && session.speed != Speed::Paused;
        if heard {
            let sources = job.machine().sounds();
            self.speaker
                .play(job.tick(), &sources, self.settings.volume);
        } else {
            self.hush();
        }
    }

    /// Lets everything fade.
    pub fn hush(&mut self) {
        self.speaker.hush();
    }
}
