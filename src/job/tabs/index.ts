export { browserTabs } from './browser-tabs';
export { onlyTab, type TabListener, type Tabs } from './tabs';
