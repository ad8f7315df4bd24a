export { type CalendarFile, orderOfWorkCalendar } from './orderOfWork';
