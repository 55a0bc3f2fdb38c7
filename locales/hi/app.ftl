### app/assessments/course.rs


### app/assessments/given.rs

flat-on-the-third-floor-d3588053 = तीसरी मंज़िल का फ़्लैट
house-at-the-end-of-the-lane-97e1d086 = गली के आख़िर में घर
ground-floor-kitchen-to-the-yard-d6aea71e = ग्राउंड फ़्लोर, आँगन की तरफ़ रसोई
two-rooms-above-the-bakery-2a36cb7d = बेकरी के ऊपर दो कमरे

### app/assessments/packing.rs


### app/assessments/room_codes.rs


### app/assessments/rules.rs


### app/assessments/screen.rs


### app/assessments/slips.rs


### app/assessments/slots.rs

take-off-66f6f69f = उतारना

### app/assessments/table.rs


### app/bench/drawer.rs


### app/bench/estimate.rs


### app/bench/gauges.rs


### app/bench/help.rs


### app/bench/instrument.rs


### app/bench/job_bar.rs


### app/bench/job_card.rs


### app/bench/moving.rs


### app/bench/notebook.rs


### app/bench/notice.rs


### app/bench/papers.rs


### app/bench/picture.rs


### app/bench/point_picker.rs


### app/bench/recorder.rs


### app/bench/safe_strip.rs


### app/bench/screen.rs


### app/bench/selection_bar.rs


### app/bench/suspects.rs


### app/bench/tests_list.rs


### app/bench/time_bar.rs


### app/bench/visit.rs


### app/cohort/aside.rs


### app/cohort/decision.rs


### app/cohort/desk/checking.rs


### app/cohort/desk.rs


### app/cohort/drop.rs


### app/cohort/erase_tab.rs


### app/cohort/erasing.rs


### app/cohort/job_page.rs


### app/cohort/jobs.rs


### app/cohort/kept_rulings.rs


### app/cohort/marks_picture.rs


### app/cohort/opened.rs


### app/cohort/others.rs


### app/cohort/pauses.rs


### app/cohort/people.rs


### app/cohort/person.rs


### app/cohort/received.rs


### app/cohort/replay.rs


### app/cohort/rows.rs


### app/cohort/ruling_store.rs


### app/cohort/rulings.rs


### app/cohort/saving.rs


### app/cohort/shown.rs


### app/cohort/skill_page.rs


### app/cohort/source.rs


### app/cohort/words.rs


### app/cohort/written.rs


### app/debrief/expert.rs


### app/debrief/likely.rs


### app/debrief/marks.rs


### app/debrief/moments.rs


### app/debrief/screen.rs


### app/debrief/step.rs


### app/desk/apprentices.rs

who-2af42a8f = कौन
in-a-hurry-c53d8883 = जल्दी में

### app/desk/draft.rs

yes-every-time-f7b25df6 = हाँ, हर बार।
no-523d6bdc = नहीं।
not-that-i-noticed-c9ce576e = मुझे तो नहीं लगा।

### app/desk/fair.rs


### app/desk/faults.rs


### app/desk/field.rs


### app/desk/fields.rs

friendly-cdd4f17e = मिलनसार
sceptical-be905d97 = शक करने वाले
what-is-wrong-95353e48 = क्या ख़राब है

### app/desk/form_table.rs


### app/desk/home.rs


### app/desk/inside_fields.rs


### app/desk/judged.rs


### app/desk/live.rs


### app/desk/pairs.rs


### app/desk/qr.rs


### app/desk/screen.rs


### app/desk/set_draft.rs


### app/desk/set_maker.rs


### app/desk/share.rs


### app/desk/told.rs


### app/desk/van.rs


### app/desk/visit_fields.rs


### app/desk/visit_lists.rs


### app/desk/way_back.rs


### app/faults/list.rs


### app/faults/mod.rs


### app/faults/page.rs


### app/faults/wash.rs


### app/finding.rs


### app/handbook/live_machine.rs


### app/handbook/parts.rs

test-2ffcbe05 = टेस्ट

### app/handbook/worked.rs


### app/handbook.rs


### app/job_filter.rs

all-13254bc4 = सब

### app/job_host.rs


### app/jobs.rs


### app/loading.rs


### app/lost_points/mod.rs


### app/lost_points/words.rs


### app/me/everything.rs


### app/me/next.rs


### app/me/screen.rs


### app/me/skills.rs


### app/newer.rs


### app/open_job.rs


### app/opened.rs


### app/outbox/section.rs


### app/proves.rs


### app/readings.rs


### app/report.rs


### app/settings.rs


### app/sheets.rs


### app/shell.rs


### app/sitting/lock.rs


### app/sitting/mark_sheet.rs


### app/sitting/observer.rs


### app/sitting/overview.rs


### app/sitting/result.rs


### app/sitting/room_pause.rs


### app/sitting/start.rs


### app/training_set.rs


### app/training_system/awaiting.rs


### app/training_system/cmi5_statement.rs


### app/training_system/fields.rs


### app/view/debrief.rs


### app/view/visit.rs

